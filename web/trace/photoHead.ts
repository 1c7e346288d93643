/**
 * What a picture file says of itself in its first bytes: its kind and its size, before a browser unpacks it. PNG (ISO/IEC
 * 15948, 11.2.2), JPEG (ITU-T T.81, B.2.2), GIF (89a, 18), WebP (RFC 9649), BMP, AVIF and HEIC (ISO/IEC 23008-12, the
 * largest 'ispe'); field places from memory, held by pictures that a browser made. Anything else is no photo here.
 */

export interface PhotoHead {
  readonly kind: "PNG" | "JPEG" | "GIF" | "WebP" | "BMP" | "AVIF" | "HEIC";
  readonly width: number;
  readonly height: number;
}

/** So much of a file is looked at: a camera's own notes before the size are seldom a tenth of it. */
export const HEAD_BYTES = 1 << 20;

/** Kind and size of a picture from its beginning; null where it is none of these, or names no size. */
export function photoHead(bytes: Uint8Array): PhotoHead | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const found = png(view) ?? gif(view) ?? webp(view) ?? bmp(view) ?? jpeg(view) ?? boxed(view);
  return found && found.width > 0 && found.height > 0 ? found : null;
}

/** Whether these letters stand at a place. */
function says(view: DataView, at: number, letters: string): boolean {
  if (at < 0 || at + letters.length > view.byteLength) return false;
  for (let i = 0; i < letters.length; i++) if (view.getUint8(at + i) !== letters.charCodeAt(i)) return false;
  return true;
}

function png(view: DataView): PhotoHead | null {
  if (view.byteLength < 24 || !says(view, 0, "\u0089PNG\r\n\u001a\n") || !says(view, 12, "IHDR")) return null;
  return { kind: "PNG", width: view.getUint32(16), height: view.getUint32(20) };
}

function gif(view: DataView): PhotoHead | null {
  if (view.byteLength < 10 || !(says(view, 0, "GIF87a") || says(view, 0, "GIF89a"))) return null;
  return { kind: "GIF", width: view.getUint16(6, true), height: view.getUint16(8, true) };
}

function webp(view: DataView): PhotoHead | null {
  if (view.byteLength < 30 || !says(view, 0, "RIFF") || !says(view, 8, "WEBP")) return null;
  const three = (at: number) => view.getUint16(at, true) + 65536 * view.getUint8(at + 2);
  if (says(view, 12, "VP8X")) return { kind: "WebP", width: 1 + three(24), height: 1 + three(27) };
  if (says(view, 12, "VP8L")) {
    const both = view.getUint32(21, true);
    return { kind: "WebP", width: 1 + (both & 0x3fff), height: 1 + ((both >>> 14) & 0x3fff) };
  }
  if (!says(view, 12, "VP8 ")) return null;
  return {
    kind: "WebP",
    width: view.getUint16(26, true) & 0x3fff,
    height: view.getUint16(28, true) & 0x3fff,
  };
}

function bmp(view: DataView): PhotoHead | null {
  if (view.byteLength < 26 || !says(view, 0, "BM")) return null;
  if (view.getUint32(14, true) === 12)
    return { kind: "BMP", width: view.getUint16(18, true), height: view.getUint16(20, true) };
  // Upside down where the height is negative.
  return { kind: "BMP", width: view.getInt32(18, true), height: Math.abs(view.getInt32(22, true)) };
}

function jpeg(view: DataView): PhotoHead | null {
  if (view.byteLength < 4 || view.getUint16(0) !== 0xffd8) return null;
  let at = 2;
  while (at + 9 <= view.byteLength) {
    if (view.getUint8(at) !== 0xff) return null;
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) at++;
    else if (marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7)) at += 2;
    else {
      const frame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
      if (frame) return { kind: "JPEG", width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
      const length = view.getUint16(at + 2);
      // The picture's own bytes, or its end, before any size.
      if (length < 2 || marker === 0xd9 || marker === 0xda) return null;
      at += 2 + length;
    }
  }
  return null;
}

/** AVIF and HEIC: the largest of the sizes named for the picture, its tiles and its thumbnail. */
function boxed(view: DataView): PhotoHead | null {
  if (!says(view, 4, "ftyp")) return null;
  const kind = says(view, 8, "avi") ? "AVIF" : "HEIC";
  let largest: PhotoHead | null = null;
  for (let at = 12; at + 16 <= view.byteLength; at++) {
    if (view.getUint8(at) !== 0x69 || !says(view, at, "ispe")) continue;
    const [width, height] = [view.getUint32(at + 8), view.getUint32(at + 12)];
    if (largest === null || width * height > largest.width * largest.height)
      largest = { kind, width, height };
  }
  return largest;
}
