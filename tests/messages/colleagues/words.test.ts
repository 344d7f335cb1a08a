/** The words of papers to colleagues: German has every slot of English, and a paper says each of them. */
import { describe, expect, it } from 'vitest';
import { words as germanDischarge } from '#messages/de/colleagues/discharge.ts';
import { words as germanFlareNote } from '#messages/de/colleagues/flare-note.ts';
import { words as germanHandover } from '#messages/de/colleagues/handover.ts';
import { words as germanLetter } from '#messages/de/colleagues/letter.ts';
import { words as germanSheet } from '#messages/de/colleagues/sheet.ts';
import { words as discharge } from '#messages/en/colleagues/discharge.ts';
import { words as flareNote } from '#messages/en/colleagues/flare-note.ts';
import { words as handover } from '#messages/en/colleagues/handover.ts';
import { words as letter } from '#messages/en/colleagues/letter.ts';
import { words as sheet } from '#messages/en/colleagues/sheet.ts';
import type { Sentence } from '#messages/sentence.ts';
import { codeFiles, textOf } from '#tests/architecture/repository.ts';
import { slotsIn } from './slots.ts';

type Words = Readonly<Record<string, Sentence>>;

const all: readonly (readonly [string, Words, Words])[] = [
  ['letter', letter, germanLetter],
  ['note about a flare', flareNote, germanFlareNote],
  ['discharge summary', discharge, germanDischarge],
  ['handover', handover, germanHandover],
  ['paper of parts', sheet, germanSheet],
];

const said = codeFiles('src/papers', 'src/api/papers', 'src/messages/papers').map(textOf).join('\n');
const begun = [...said.matchAll(/`([a-z][a-z0-9.-]*)\$\{/g)].map(([, start = '']) => start);

describe.each(all)('every sentence of the %s', (_name, english, german) => {
  it('has in German the slots of the English one', () => {
    const differing = Object.keys(english).filter(
      (key) => slotsIn(german[key]!).join() !== slotsIn(english[key]!).join(),
    );
    expect(differing).toEqual([]);
  });

  it('is said by a paper', () => {
    const unsaid = Object.keys(english).filter(
      (key) => !said.includes(`'${key}'`) && !begun.some((start) => key.startsWith(start)),
    );
    expect(unsaid).toEqual([]);
  });
});
