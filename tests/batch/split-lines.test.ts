import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LineSplitter } from '#api/batch/split-lines.ts';
import { holds } from '#tests/support/holds.ts';

type Seen = readonly [number: number, text: string | 'overlong'];

/** Feeds the bytes in pieces of the given lengths, the last one repeating. */
const split = (bytes: Uint8Array, limit: number, pieces: readonly number[] = [bytes.length]): Seen[] => {
  const seen: Seen[] = [];
  const splitter = new LineSplitter(limit, {
    line: (line, number) => seen.push([number, Buffer.from(line).toString('utf8')]),
    overlong: (number) => seen.push([number, 'overlong']),
  });
  for (let from = 0, piece = 0; from < bytes.length; piece += 1) {
    const length = Math.max(1, pieces[Math.min(piece, pieces.length - 1)] ?? 1);
    splitter.push(bytes.subarray(from, from + length));
    from += length;
  }
  splitter.end();
  return seen;
};

const utf8 = (text: string) => new TextEncoder().encode(text);

describe('lines are counted from 1 as a text editor counts them', () => {
  const cases: readonly [string, string, readonly Seen[]][] = [
    ['nothing at all', '', []],
    ['a line without its end', 'a', [[1, 'a']]],
    ['a line with its end', 'a\n', [[1, 'a']]],
    [
      'an empty line between',
      'a\n\nb\n',
      [
        [1, 'a'],
        [2, ''],
        [3, 'b'],
      ],
    ],
    [
      'carriage returns',
      'a\r\nb\r\n',
      [
        [1, 'a'],
        [2, 'b'],
      ],
    ],
    [
      'a byte order mark',
      '\uFEFFa\nb',
      [
        [1, 'a'],
        [2, 'b'],
      ],
    ],
    [
      'a mark later on is content',
      'a\n\uFEFFb',
      [
        [1, 'a'],
        [2, '\uFEFFb'],
      ],
    ],
  ];
  it.each(cases)('%s', (_, text, expected) => {
    expect(split(utf8(text), 100)).toEqual(expected);
  });

  it('gives the same lines however the bytes arrive', () => {
    const text = fc.array(fc.constantFrom('a', 'é', '😀', '\n', '\r\n', '{"x":1}', '\uFEFF'), {
      maxLength: 40,
    });
    const pieces = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 6 });
    holds(text, pieces, (parts, lengths) => {
      const bytes = utf8(parts.join(''));
      expect(split(bytes, 12, lengths)).toEqual(split(bytes, 12));
    });
  });
});

describe('a line over the limit is refused by its number and the next goes on', () => {
  it.each([
    ['one under', 9, 'x'.repeat(9)],
    ['at the limit', 10, 'x'.repeat(10)],
    ['one over', 11, 'overlong'],
  ] as const)('%s', (_, length, expected) => {
    expect(split(utf8(`${'x'.repeat(length)}\nnext`), 10)).toEqual([
      [1, expected],
      [2, 'next'],
    ]);
  });

  it('does not count a byte order mark or a carriage return', () => {
    expect(split(utf8(`\uFEFF${'x'.repeat(10)}\r\n`), 10)).toEqual([[1, 'x'.repeat(10)]]);
  });

  it('tells of one that never ends', () => {
    expect(split(utf8('x'.repeat(1000)), 10, [7])).toEqual([[1, 'overlong']]);
  });
});
