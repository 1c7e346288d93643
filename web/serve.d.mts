/** Serves the built page, on this machine only unless `host` says otherwise; port 0 takes any free one. */
export function serve(
  port?: number,
  folder?: URL,
  host?: string,
): Promise<{ readonly server: import("node:http").Server; readonly address: string }>;
/** Addresses of this machine in its own networks. */
export function lanAddresses(interfaces?: ReturnType<typeof import("node:os").networkInterfaces>): string[];
/** A QR code in half blocks. */
export function qrText(words: string): string;
