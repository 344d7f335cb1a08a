/** A letter from what it is made from to its file, against an empty page of the same engine. */
import { letterPaperFor } from '#api/papers/letter-paper.ts';
import { openStore } from '#data/open-store.ts';
import { patientOf } from '#data/patients/people.ts';
import { printLetter } from '#papers/letter/print-letter.ts';
import type { Look } from '#papers/look.ts';
import { typeset } from '#papers/typesetting/typeset.ts';
import { accessTo, groupFile } from '../group/make-group.ts';
import { patientId } from '../group/plan.ts';
import { measurePairs } from '../pairs.ts';
import { type BenchSettings, type Measured, type Part, rounded } from '../part.ts';

const bar = 6;

/** The engine remembers what it set before, so every pair has words of its own. */
const named = (pair: number): string => `Nobody ${pair}`;

const run = async (settings: BenchSettings): Promise<readonly Measured[]> => {
  const store = openStore(await groupFile(settings.plan));
  try {
    const access = accessTo(store);
    const patient = await patientOf(access, patientId(0));
    if (!patient) throw new Error('The group has no first patient.');
    const letter = await letterPaperFor(access, patient);
    const look: Look = { paper: 'a4', language: 'en', isLarge: false, printedOn: access.day };
    const one = (name: string) => ({ ...letter, patient: { ...letter.patient, name } });
    const empty = (title: string) => {
      const nothing = { title, author: title, footer: title, sayUnprintable: (names: string) => names };
      return typeset('empty', nothing, look, { pt: [11], mostPages: 1 });
    };
    const paired = await measurePairs(
      { ready: async (pair) => () => printLetter(one(named(pair)), look) },
      { ready: async (pair) => () => empty(named(pair)) },
      settings.until,
    );
    const { pages } = await printLetter(letter, look);
    const figures = {
      pages,
      'letter ms': rounded(paired.firstMs),
      'empty page ms': rounded(paired.secondMs),
    };
    return [{ part: 'paper', title: 'letter, empty page', bar, paired, figures }];
  } finally {
    store.close();
  }
};

export const paperPart: Part = {
  name: 'paper',
  about: 'a letter as a file against an empty page of the same engine',
  run,
};
