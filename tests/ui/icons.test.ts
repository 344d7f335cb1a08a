/**
 * The icons a phone puts on its start screen. PNG: W3C, Portable Network Graphics (Third Edition), 5.2 for the
 * signature, 11.2.1 for IHDR, 9.2 for the filters. Maskable: W3C, Web Application Manifest, "Icon masks and
 * safe zone": a circle in the middle with a radius of 2/5 of the smaller side. Section numbers from memory.
 */
import { readFileSync } from 'node:fs';
import { inflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import manifest from '../../src/app/manifest.ts';
import { config } from '../../src/proxy.ts';

const signature = [137, 80, 78, 71, 13, 10, 26, 10];

const bytesOf = (address: string): Buffer => readFileSync(`src/app${address}`);

const chunksOf = (png: Buffer): readonly { readonly name: string; readonly data: Buffer }[] => {
  const chunks = [];
  for (let at = signature.length; at < png.length; ) {
    const length = png.readUInt32BE(at);
    chunks.push({
      name: png.toString('latin1', at + 4, at + 8),
      data: png.subarray(at + 8, at + 8 + length),
    });
    at += length + 12;
  }
  return chunks;
};

const headOf = (png: Buffer) => {
  const [head] = chunksOf(png);
  return {
    signature: [...png.subarray(0, 8)],
    name: head?.name,
    width: head?.data.readUInt32BE(0),
    height: head?.data.readUInt32BE(4),
  };
};

const headOfSide = (side: number) => ({ signature, name: 'IHDR', width: side, height: side });

/** Which of the three neighbours the filter "Paeth" takes. */
const paeth = (left: number, up: number, upLeft: number): number => {
  const guess = left + up - upLeft;
  const [toLeft, toUp, toUpLeft] = [left, up, upLeft].map((one) => Math.abs(guess - one)) as [
    number,
    number,
    number,
  ];
  if (toLeft <= toUp && toLeft <= toUpLeft) return left;
  return toUp <= toUpLeft ? up : upLeft;
};

/** The pixels of a picture of 8 bits a channel, not interlaced, as numbers of red, green and blue. */
const pixelsOf = (png: Buffer): { readonly side: number; at(x: number, y: number): string } => {
  const chunks = chunksOf(png);
  const head = chunks[0]!.data;
  const side = head.readUInt32BE(0);
  expect([head[8], head[12]]).toEqual([8, 0]);
  const channels = { 2: 3, 6: 4 }[head[9]!]!;
  const raw = inflateSync(
    Buffer.concat(chunks.filter(({ name }) => name === 'IDAT').map(({ data }) => data)),
  );
  const line = side * channels;
  const out = Buffer.alloc(line * side);
  for (let y = 0; y < side; y += 1) {
    const filter = raw[y * (line + 1)]!;
    for (let x = 0; x < line; x += 1) {
      const left = x < channels ? 0 : out[y * line + x - channels]!;
      const up = y === 0 ? 0 : out[(y - 1) * line + x]!;
      const upLeft = y === 0 || x < channels ? 0 : out[(y - 1) * line + x - channels]!;
      const guess = [0, left, up, (left + up) >> 1, paeth(left, up, upLeft)][filter]!;
      out[y * line + x] = raw[y * (line + 1) + 1 + x]! + guess;
    }
  }
  return {
    side,
    at: (x, y) => out.subarray(y * line + x * channels, y * line + x * channels + 3).toString('hex'),
  };
};

const named = manifest().icons ?? [];
const pngs = named.filter(({ type }) => type === 'image/png');

describe('the icons of the start screen', () => {
  it('are PNG files as wide and high as the manifest says', () => {
    expect(pngs.map(({ sizes, purpose }) => `${sizes} ${purpose}`)).toEqual([
      '192x192 any',
      '512x512 any',
      '512x512 maskable',
    ]);
    for (const { src, sizes } of pngs)
      expect(headOf(bytesOf(src)), src).toEqual(headOfSide(Number(sizes?.split('x')[0])));
  });

  // 180: the side Apple names for the home screen of a phone ("Configuring Web Applications"; from memory).
  it('have one of 180 for phones that read no manifest, named in the head by its place', () => {
    expect(headOf(bytesOf('/apple-icon.png'))).toEqual(headOfSide(180));
  });

  it('keep the whole mark of the maskable one in the circle no mask cuts', () => {
    const maskable = pngs.find(({ purpose }) => purpose === 'maskable');
    const { side, at } = pixelsOf(bytesOf(maskable!.src));
    const paper = at(0, 0);
    const middle = (side - 1) / 2;
    const marked: number[] = [];
    for (let y = 0; y < side; y += 1)
      for (let x = 0; x < side; x += 1)
        if (at(x, y) !== paper) marked.push(Math.hypot(x - middle, y - middle));
    expect(marked.length).toBeGreaterThan(1000);
    expect(Math.max(...marked)).toBeLessThan((side * 2) / 5);
  });

  it('fill their square with the paper of the start screen: a phone paints no colour of its own behind', () => {
    const paper = manifest().background_color?.slice(1);
    for (const src of [...pngs.map((icon) => icon.src), '/apple-icon.png']) {
      const { side, at } = pixelsOf(bytesOf(src));
      const corners = [at(0, 0), at(side - 1, 0), at(0, side - 1), at(side - 1, side - 1)];
      expect(corners, src).toEqual([paper, paper, paper, paper]);
    }
  });

  it('are answered without the headers of a page, so that a phone may keep them', () => {
    const isPage = new RegExp(`^${config.matcher[0]}$`);
    expect(isPage.test('/today')).toBe(true);
    for (const { src } of [...named, { src: '/apple-icon.png' }]) expect(isPage.test(src), src).toBe(false);
  });
});
