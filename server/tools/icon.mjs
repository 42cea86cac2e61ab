// Draws client/icon.png with Node alone: a tower case on a bench, seen from the side. Run: node server/tools/icon.mjs
import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { crc32, deflateSync } from 'node:zlib';

const size = 128;
const sub = 4;
const colours = {
  ground: [31, 58, 68],
  bench: [205, 160, 98],
  box: [232, 238, 236],
  dark: [58, 84, 92],
  mark: [226, 110, 60],
};

/** The colour at a point, or undefined where the picture is clear; later shapes lie over earlier ones. */
function colourAt(x, y) {
  let colour;
  const paint = (name, inside) => inside && (colour = colours[name]);
  paint('ground', rounded(x, y, 4, 4, 120, 120, 22));
  paint('box', rounded(x, y, 30, 22, 44, 72, 5));
  paint('dark', ring(x, y, 52, 47, 10, 15));
  paint('dark', rounded(x, y, 37, 72, 30, 4, 2));
  paint('dark', rounded(x, y, 37, 81, 30, 4, 2));
  paint(
    'mark',
    stroke(
      x,
      y,
      [
        [82, 66],
        [92, 78],
        [110, 48],
      ],
      4.5,
    ),
  );
  paint('bench', rounded(x, y, 18, 96, 92, 8, 3));
  paint('bench', rounded(x, y, 26, 102, 8, 14, 2) || rounded(x, y, 94, 102, 8, 14, 2));
  return colour;
}

function rounded(x, y, left, top, width, height, radius) {
  const dx = Math.max(left + radius - x, 0, x - (left + width - radius));
  const dy = Math.max(top + radius - y, 0, y - (top + height - radius));
  return dx * dx + dy * dy <= radius * radius;
}

function ring(x, y, cx, cy, inner, outer) {
  const distance = Math.hypot(x - cx, y - cy);
  return distance >= inner && distance <= outer;
}

function stroke(x, y, points, half) {
  return points.slice(1).some(([bx, by], i) => {
    const [ax, ay] = points[i];
    const along = Math.min(
      1,
      Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / ((bx - ax) ** 2 + (by - ay) ** 2)),
    );
    return Math.hypot(x - ax - along * (bx - ax), y - ay - along * (by - ay)) <= half;
  });
}

/** One pixel, from a grid of points in it. */
function pixel(column, row) {
  const sum = [0, 0, 0, 0];
  for (let i = 0; i < sub * sub; i++) {
    const colour = colourAt(column + ((i % sub) + 0.5) / sub, row + (Math.floor(i / sub) + 0.5) / sub);
    if (!colour) continue;
    colour.forEach((value, c) => (sum[c] += value));
    sum[3] += 1;
  }
  const covered = sum[3];
  return covered === 0
    ? [0, 0, 0, 0]
    : [...sum.slice(0, 3).map((value) => Math.round(value / covered)), Math.round((covered / (sub * sub)) * 255)];
}

function chunk(type, data) {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc32(body) >>> 0);
  return Buffer.concat([length, body, sum]);
}

const rows = Array.from({ length: size }, (_, row) =>
  Buffer.from([0, ...Array.from({ length: size }, (__, column) => pixel(column, row)).flat()]),
);
const header = Buffer.alloc(13);
header.writeUInt32BE(size, 0);
header.writeUInt32BE(size, 4);
header.set([8, 6, 0, 0, 0], 8);
const png = Buffer.concat([
  Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
  chunk('IHDR', header),
  chunk('IDAT', deflateSync(Buffer.concat(rows), { level: 9 })),
  chunk('IEND', Buffer.alloc(0)),
]);
writeFileSync(join(dirname(fileURLToPath(import.meta.url)), '../../client/icon.png'), png);
