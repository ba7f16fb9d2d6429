// The icons as PNG, for devices that take no SVG: drawn from the SVG files by the distance of each pixel to each
// shape. It knows what those files use: rounded rectangles, discs, and strokes with round ends of M, V and half circles.
import { crc32, deflateSync } from "node:zlib";

const attributesOf = (tag) => Object.fromEntries([...tag.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, name, value]) => [name, value]));
const colour = (hex) => [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16));
const length = (x, y) => Math.sqrt(x * x + y * y);

function disc({ cx, cy, r }) {
  return (x, y) => length(x - cx, y - cy) - r;
}

function rectangle({ width, height, rx }) {
  const outside = (at, size) => Math.abs(at - size / 2) - size / 2 + Number(rx);
  return (x, y) => {
    const [dx, dy] = [outside(x, width), outside(y, height)];
    return Math.min(Math.max(dx, dy), 0) + length(Math.max(dx, 0), Math.max(dy, 0)) - rx;
  };
}

/** The corners of a path; a half circle, over the top, as many short lines. */
function corners(d) {
  let x = 0, y = 0;
  const points = [];
  const to = (nextX, nextY) => points.push([x, y] = [nextX, nextY]);
  for (const [, command, text] of d.matchAll(/([A-Z])([^A-Z]*)/g)) {
    const numbers = text.trim().split(/[ ,]+/).map(Number);
    if (command === "M") to(...numbers);
    else if (command === "V") to(x, numbers[0]);
    else if (command === "A") {
      const [r, end, base] = [numbers[0], numbers[5], y];
      for (let step = 1; step <= 64; step += 1) to(end - r - r * Math.cos((Math.PI * step) / 64), base - r * Math.sin((Math.PI * step) / 64));
    } else throw new Error(`An icon's path has ${command}, which pkg-config/icons.mjs does not draw.`);
  }
  return points;
}

function stroke({ d, "stroke-width": width }) {
  const points = corners(d);
  return (x, y) => {
    let nearest = Infinity;
    for (let i = 1; i < points.length; i += 1) {
      const [[ax, ay], [bx, by]] = [points[i - 1], points[i]];
      const [dx, dy] = [bx - ax, by - ay];
      const along = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
      nearest = Math.min(nearest, length(x - ax - along * dx, y - ay - along * dy));
    }
    return nearest - width / 2;
  };
}

const shapes = { circle: disc, rect: rectangle, path: stroke };

function chunk(name, data) {
  const body = Buffer.concat([Buffer.from(name, "latin1"), data]);
  const [size, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  size.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([size, body, check]);
}

/** A square PNG of `size` pixels of an icon's SVG, which is 16 units wide. */
export function pngOf(svg, size) {
  const drawn = [...svg.matchAll(/<(circle|rect|path)\b[^>]*>/g)].map(([tag, name]) => {
    const attributes = attributesOf(tag);
    return { distance: shapes[name](attributes), ink: colour(name === "path" ? attributes.stroke : attributes.fill) };
  });
  const scale = size / 16;
  const row = 1 + 4 * size; // each row begins with its filter, which is none
  const pixels = Buffer.alloc(size * row);
  for (let y = 0; y < size; y += 1) {
    for (let x = 0; x < size; x += 1) {
      const at = y * row + 1 + 4 * x;
      for (const { distance, ink } of drawn) {
        const cover = Math.min(1, Math.max(0, 0.5 - distance((x + 0.5) / scale, (y + 0.5) / scale) * scale));
        const under = pixels[at + 3] / 255;
        const alpha = cover + under * (1 - cover);
        if (alpha === 0) continue;
        for (let i = 0; i < 3; i += 1) pixels[at + i] = Math.round((ink[i] * cover + pixels[at + i] * under * (1 - cover)) / alpha);
        pixels[at + 3] = Math.round(255 * alpha);
      }
    }
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(size, 0);
  head.writeUInt32BE(size, 4);
  head.set([8, 6, 0, 0, 0], 8); // eight bits, red green blue alpha
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([signature, chunk("IHDR", head), chunk("IDAT", deflateSync(pixels, { level: 9 })), chunk("IEND", Buffer.alloc(0))]);
}
