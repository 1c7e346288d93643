/** Serves the built page on this machine; port 0 takes any free one. */
export function serve(
  port?: number,
  folder?: URL,
): Promise<{ readonly server: import("node:http").Server; readonly address: string }>;
