/** `npm run messages` prints every sentence a patient may read, and every one of the staff screens, once. */
import { describe, expect, it, vi } from 'vitest';
import { messageLines, run } from '#commands/messages.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { languages } from '#messages/languages.ts';
import { everyRow, staffRows } from '#messages/sentence-rows.ts';

const everyTag = languages.map(({ tag }) => tag);

const printed = async (args: readonly string[]) => {
  const [out, err]: [string[], string[]] = [[], []];
  const spies = [
    vi.spyOn(process.stdout, 'write').mockImplementation((text) => out.push(String(text)) > 0),
    vi.spyOn(process.stderr, 'write').mockImplementation((text) => err.push(String(text)) > 0),
  ];
  const code = await run(args);
  for (const spy of spies) spy.mockRestore();
  return { code, lines: out.join('').trimEnd().split('\n'), err: err.join('') };
};

describe('the list of messages', () => {
  it.each(everyTag)('in %s has every key, and each text of an area on one line', (tag) => {
    const lines = messageLines(tag, false);
    const rows = [...everyRow(everyLanguage[tag]), ...(tag === 'en' ? staffRows : [])];
    expect(lines.flatMap(({ keys }) => keys)).toHaveLength(rows.length);
    expect(new Set(lines.map(({ area, text }) => `${area} ${text}`)).size).toBe(lines.length);
    expect(new Set(lines.map(({ text }) => text))).toEqual(new Set(rows.map(({ text }) => text)));
  });

  it('says of each that nobody has approved the wording yet', () => {
    expect(
      everyTag.flatMap((tag) => messageLines(tag, false)).filter(({ reviewer }) => reviewer !== null),
    ).toEqual([]);
  });

  it.each(everyTag)('in %s leaves no slot open when they are filled, and fits each case', (tag) => {
    const lines = messageLines(tag, true);
    expect(lines.filter(({ text }) => /[{}]|undefined/.test(text))).toEqual([]);
    const keys = new Set(messageLines(tag, false).flatMap((line) => line.keys));
    expect(new Set(lines.flatMap((line) => line.keys))).toEqual(keys);
    const tries = lines.filter(({ keys: [key = ''] }) => key.startsWith('wrong-pin')).map(({ text }) => text);
    expect(tries.map((text) => /\d/.exec(text)?.[0])).toEqual(['1', '3']);
  });

  it('is printed as JSON lines, of one language where it is named', async () => {
    const { code, lines } = await printed(['--language', 'de']);
    expect(code).toBe(0);
    const read = lines.map((line) => JSON.parse(line));
    expect(new Set(read.map(({ language }) => language))).toEqual(new Set(['de']));
    expect(Object.keys(read[0])).toEqual(['area', 'keys', 'language', 'text', 'reviewer']);
    expect((await printed([])).lines.length).toBeGreaterThan(lines.length);
  });

  it.each([['--language'], ['--language', 'xx'], ['--slots'], ['--slots', 'empty'], ['de']])(
    'explains itself when asked for %s %s',
    async (...args) => {
      const { code, err } = await printed(args);
      expect(code).toBe(2);
      expect(err).toMatch(/^Usage: npm run messages/);
    },
  );
});
