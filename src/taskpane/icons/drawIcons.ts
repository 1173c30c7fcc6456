import { writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { deflateSync } from "node:zlib";
import { crc32 } from "../../workbook/file/crc32";

/** Draws the add-in's icons from one drawing of our own: two cordons on a wire, with spurs and a gap. */
export const ICON_SIZES = [16, 32, 64, 80, 128] as const;

type Color = readonly [red: number, green: number, blue: number];
interface Stroke {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
  readonly width: number;
  readonly color: Color;
}

const WIRE: Color = [138, 143, 152];
const WOOD: Color = [122, 78, 42];
const SPUR: Color = [63, 140, 62];
/** Points along each side of a pixel at which the drawing is looked up. */
const SAMPLES = 4;

/** The drawing on a field of 100 x 100, y downwards, later strokes on top; small icons get fewer, stronger strokes. */
function strokesFor(size: number): Stroke[] {
  const small = size < 32;
  const strong = small ? 1.5 : 1;
  const stroke = (
    color: Color,
    width: number,
    from: readonly [number, number],
    to: readonly [number, number],
  ): Stroke => ({ color, width: width * strong, from, to });
  const spurs = small ? [16, 38, 84] : [12, 26, 40, 60, 88];
  return [
    stroke(WIRE, 4, [2, 44], [98, 44]),
    ...spurs.flatMap((x) => [
      stroke(SPUR, 6, [x, 46], [x, 24]),
      ...(small ? [] : [stroke(SPUR, 5, [x, 30], [x + (x < 50 ? -5 : 5), 18])]),
    ]),
    stroke(WOOD, 13, [50, 98], [50, 64]),
    stroke(WOOD, 11, [50, 66], [36, 50]),
    stroke(WOOD, 11, [50, 66], [64, 50]),
    stroke(WOOD, 10, [36, 50], [7, 48]),
    stroke(WOOD, 10, [64, 50], [93, 48]),
  ];
}

/**
 * The icon as rows of red, green, blue, opacity.
 *
 * @param size width and height in pixels
 */
export function drawIcon(size: number): Uint8Array {
  const strokes = strokesFor(size);
  const pixels = new Uint8Array(size * size * 4);
  for (let y = 0; y < size; y++)
    for (let x = 0; x < size; x++) pixels.set(pixel(strokes, x, y, 100 / size), (y * size + x) * 4);
  return pixels;
}

function pixel(strokes: readonly Stroke[], x: number, y: number, scale: number): number[] {
  const sum = [0, 0, 0];
  let covered = 0;
  for (let down = 0; down < SAMPLES; down++)
    for (let across = 0; across < SAMPLES; across++) {
      const left = (x + (across + 0.5) / SAMPLES) * scale;
      const top = (y + (down + 0.5) / SAMPLES) * scale;
      for (let i = strokes.length - 1; i >= 0; i--) {
        if (!covers(strokes[i], left, top)) continue;
        covered += 1;
        for (let channel = 0; channel < 3; channel++) sum[channel] += strokes[i].color[channel];
        break;
      }
    }
  const mean = sum.map((part) => (covered === 0 ? 0 : Math.round(part / covered)));
  return [...mean, Math.round((255 * covered) / (SAMPLES * SAMPLES))];
}

/** A stroke covers what lies within half its width of its line. */
function covers({ from, to, width }: Stroke, x: number, y: number): boolean {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const along = ((x - from[0]) * dx + (y - from[1]) * dy) / (dx * dx + dy * dy);
  const share = Math.min(1, Math.max(0, along));
  const [offX, offY] = [x - from[0] - share * dx, y - from[1] - share * dy];
  return offX * offX + offY * offY <= (width * width) / 4;
}

/** A PNG file of 8-bit red, green, blue and opacity (PNG specification, third edition, section 5). */
function pngOf(size: number, pixels: Uint8Array): Buffer {
  const lines = Buffer.alloc(size * (size * 4 + 1));
  for (let y = 0; y < size; y++)
    lines.set(pixels.subarray(y * size * 4, (y + 1) * size * 4), y * (size * 4 + 1) + 1);
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  header.set([8, 6, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", header),
    chunk("IDAT", deflateSync(lines, { level: 9 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const framed = Buffer.alloc(body.length + 8);
  framed.writeUInt32BE(data.length, 0);
  framed.set(body, 4);
  framed.writeUInt32BE(crc32(body), body.length + 4);
  return framed;
}

const folder = path.dirname(fileURLToPath(import.meta.url));
if (process.argv[1] === fileURLToPath(import.meta.url))
  for (const size of ICON_SIZES)
    writeFileSync(path.join(folder, `icon-${size}.png`), pngOf(size, drawIcon(size)));
