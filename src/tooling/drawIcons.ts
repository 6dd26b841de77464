/**
 * `npm run icons`: draws the add-in's icons, a standing vessel two thirds full with vapour above the liquid.
 * The picture is arithmetic on a unit square, so that the same bytes come out on every machine.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { zlibSync } from "fflate";

type Colour = readonly [red: number, green: number, blue: number, alpha: number];

const shell: Colour = [11, 90, 99, 255];
const vapour: Colour = [230, 239, 238, 255];
const liquid: Colour = [74, 163, 168, 255];
const clear: Colour = [0, 0, 0, 0];
const white: Colour = [255, 255, 255, 255];

/** Signed distance from a rounded box (negative inside); the usual formula of constructive drawing. */
const fromRoundedBox = (
  x: number,
  y: number,
  left: number,
  top: number,
  right: number,
  bottom: number,
  radius: number,
) => {
  const across = Math.abs(x - (left + right) / 2) - (right - left) / 2 + radius;
  const down = Math.abs(y - (top + bottom) / 2) - (bottom - top) / 2 + radius;
  const outside = Math.sqrt(Math.max(across, 0) ** 2 + Math.max(down, 0) ** 2);
  return outside + Math.min(Math.max(across, down), 0) - radius;
};

const inCircle = (x: number, y: number, centreX: number, centreY: number, radius: number): boolean =>
  (x - centreX) ** 2 + (y - centreY) ** 2 <= radius ** 2;

const wall = 0.075;

const isShell = (x: number, y: number): boolean => {
  const vessel = fromRoundedBox(x, y, 0.22, 0.14, 0.78, 0.88, 0.2);
  const neck = x >= 0.42 && x <= 0.58 && y >= 0.03 && y <= 0.17;
  const feet = y >= 0.8 && y <= 0.98 && ((x >= 0.26 && x <= 0.36) || (x >= 0.64 && x <= 0.74));
  return (vessel <= 0 && vessel > -wall) || (vessel > 0 && (neck || feet));
};

const inColour = (x: number, y: number): Colour => {
  if (isShell(x, y)) return shell;
  if (fromRoundedBox(x, y, 0.22, 0.14, 0.78, 0.88, 0.2) > 0) return clear;
  if (y >= 0.46) return inCircle(x, y, 0.42, 0.68, 0.06) || inCircle(x, y, 0.57, 0.56, 0.04) ? vapour : liquid;
  return vapour;
};

const inOutline = (x: number, y: number): Colour => {
  const inside = fromRoundedBox(x, y, 0.22, 0.14, 0.78, 0.88, 0.2) <= -wall;
  return isShell(x, y) || (inside && y >= 0.46 && y <= 0.53) ? white : clear;
};

const samples = 8;

/** Rows of RGBA, each pixel the mean of 8 × 8 points weighted by their opacity. */
const raster = (size: number, colourAt: (x: number, y: number) => Colour): Uint8Array => {
  const pixels = new Uint8Array(size * size * 4);
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      const sum = [0, 0, 0, 0] as [number, number, number, number];
      for (let point = 0; point < samples * samples; point++) {
        const x = (column + ((point % samples) + 0.5) / samples) / size;
        const y = (row + (Math.floor(point / samples) + 0.5) / samples) / size;
        const [red, green, blue, alpha] = colourAt(x, y);
        sum[0] += red * alpha;
        sum[1] += green * alpha;
        sum[2] += blue * alpha;
        sum[3] += alpha;
      }
      const start = (row * size + column) * 4;
      for (let channel = 0; channel < 3; channel++) {
        pixels[start + channel] = sum[3] === 0 ? 0 : Math.round((sum[channel] as number) / sum[3]);
      }
      pixels[start + 3] = Math.round(sum[3] / (samples * samples));
    }
  }
  return pixels;
};

/** CRC-32 as PNG asks for it (ISO/IEC 15948, annex D). */
const checksum = (bytes: Uint8Array): number => {
  let remainder = 0xffffffff;
  for (const byte of bytes) {
    remainder ^= byte;
    for (let bit = 0; bit < 8; bit++) remainder = remainder & 1 ? (remainder >>> 1) ^ 0xedb88320 : remainder >>> 1;
  }
  return (remainder ^ 0xffffffff) >>> 0;
};

const chunk = (type: string, data: Uint8Array): Buffer => {
  const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(checksum(body));
  return Buffer.concat([length, body, check]);
};

/** An 8-bit RGBA image as PNG (ISO/IEC 15948). */
const png = (size: number, pixels: Uint8Array): Buffer => {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(size, 0);
  head.writeUInt32BE(size, 4);
  head.set([8, 6, 0, 0, 0], 8);
  const rows = new Uint8Array(size * (size * 4 + 1));
  for (let row = 0; row < size; row++)
    rows.set(pixels.subarray(row * size * 4, (row + 1) * size * 4), row * (size * 4 + 1) + 1);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", head),
    chunk("IDAT", zlibSync(rows, { level: 9 })),
    chunk("IEND", new Uint8Array()),
  ]);
};

/** File name and bytes of every icon the manifests name. */
export const drawIcons = (): Map<string, Buffer> =>
  new Map([
    ...[16, 32, 64, 80, 192].map((size) => [`icon-${size}.png`, png(size, raster(size, inColour))] as const),
    ["outline-32.png", png(32, raster(32, inOutline))],
  ]);

if (require.main === module) {
  const folder = path.resolve(__dirname, "..", "..", "manifest", "icons");
  mkdirSync(folder, { recursive: true });
  for (const [name, bytes] of drawIcons()) writeFileSync(path.join(folder, name), bytes);
}
