/**
 * Small picture files, built byte by byte: whole ones that a browser shows (PNG, GIF, BMP) and beginnings that name a size
 * (JPEG, WebP, AVIF). Sources as in web/trace/photoHead.ts; what a browser makes itself is tried beside them.
 */
import { deflateSync } from "node:zlib";

const u16 = (value: number) => [value & 255, (value >>> 8) & 255];
const u32 = (value: number) => [...u16(value & 65535), ...u16(value >>> 16)];
const big16 = (value: number) => u16(value).reverse();
const big32 = (value: number) => u32(value).reverse();
const letters = (text: string) => [...Buffer.from(text, "latin1")];

/** CRC-32 of a PNG's chunk (ISO/IEC 15948, annex D). */
function crc(bytes: readonly number[]): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
  }
  return ~sum >>> 0;
}

/** A grey PNG; `rows` fewer than its height leave it cut off. */
export function png(width: number, height: number, rows = height): Buffer {
  const chunk = (kind: string, data: readonly number[]) => {
    const body = [...letters(kind), ...data];
    return [...big32(data.length), ...body, ...big32(crc(body))];
  };
  const line = Buffer.alloc(width + 1, 128).fill(0, 0, 1);
  const pixels = deflateSync(Buffer.concat(Array.from({ length: rows }, () => line)));
  return Buffer.from([
    ...letters("\u0089PNG\r\n\u001a\n"),
    ...chunk("IHDR", [...big32(width), ...big32(height), 8, 0, 0, 0, 0]),
    ...chunk("IDAT", [...pixels]),
    ...chunk("IEND", []),
  ]);
}

/** A GIF of one point on a screen of that size. */
export function gif(width: number, height: number): Buffer {
  const image = [0x2c, ...u16(0), ...u16(0), ...u16(1), ...u16(1), 0, 2, 2, 0x44, 1, 0, 0x3b];
  return Buffer.from([
    ...letters("GIF89a"),
    ...u16(width),
    ...u16(height),
    0x80,
    0,
    0,
    0,
    0,
    0,
    255,
    255,
    255,
    ...image,
  ]);
}

/** A BMP of three bytes a point. */
export function bmp(width: number, height: number): Buffer {
  const pixels = Buffer.alloc(4 * Math.ceil((3 * width) / 4) * Math.abs(height), 90);
  const head = [
    ...letters("BM"),
    ...u32(54 + pixels.length),
    ...u32(0),
    ...u32(54),
    ...u32(40),
    ...u32(width),
  ];
  const rest = [...u32(height >>> 0), ...u16(1), ...u16(24), ...Array.from({ length: 24 }, () => 0)];
  return Buffer.concat([Buffer.from([...head, ...rest]), pixels]);
}

/** A JPEG up to its size, a camera's note of `noteBytes` before it. */
export function jpegHead(width: number, height: number, noteBytes = 20): Buffer {
  const note = [0xff, 0xe1, ...big16(2 + noteBytes), ...Array.from({ length: noteBytes }, () => 0xff)];
  const frame = [0xff, 0xc2, ...big16(17), 8, ...big16(height), ...big16(width), 3, ...Array(9).fill(1)];
  return Buffer.from([0xff, 0xd8, ...note, 0xff, ...frame, 0xff, 0xd9]);
}

/** A WebP up to its size, in each of its three kinds. */
export function webpHead(kind: "VP8 " | "VP8L" | "VP8X", width: number, height: number): Buffer {
  const three = (value: number) => u32(value).slice(0, 3);
  const plain = [0x30, 1, 0, 0x9d, 1, 0x2a, ...u16(width), ...u16(height)];
  const lossless = [0x2f, ...u32((width - 1) | ((height - 1) << 14)), 0, 0, 0, 0, 0];
  const wide = [0, 0, 0, 0, ...three(width - 1), ...three(height - 1)];
  const body = { "VP8 ": plain, VP8L: lossless, VP8X: wide }[kind];
  return Buffer.from([
    ...letters("RIFF"),
    ...u32(40),
    ...letters(`WEBP${kind}`),
    ...u32(body.length),
    ...body,
  ]);
}

/** An AVIF up to its sizes, a thumbnail's first. */
export function avifHead(width: number, height: number): Buffer {
  const size = (w: number, h: number) => [
    ...big32(20),
    ...letters("ispe"),
    ...big32(0),
    ...big32(w),
    ...big32(h),
  ];
  const kind = [...big32(20), ...letters("ftypavif"), ...big32(0), ...letters("mif1")];
  return Buffer.from([...kind, ...size(160, 120), ...size(width, height)]);
}

/** One of each, small. */
export function smallPictures(): Buffer[] {
  return [
    png(7, 5),
    gif(7, 5),
    bmp(7, -5),
    jpegHead(7, 5),
    webpHead("VP8 ", 7, 5),
    webpHead("VP8L", 7, 5),
    webpHead("VP8X", 7, 5),
    avifHead(700, 500),
  ];
}
