/** A clinic for research as a folder. Of each record only what may be told is kept while the next one is read. */
import { randomBytes } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Access } from '#data/access.ts';
import { peopleOf } from '#data/patients/people.ts';
import type { How } from '#exchange/person-files.ts';
import { personRecordOf } from '#exchange/person-record.ts';
import { factsOf, type Left, type PersonFacts } from '#exchange/research/facts.ts';
import { researchFiles } from '#exchange/research/research-files.ts';
import { say } from '../say.mjs';
import type { Note } from './clinic-files.ts';

const peopleBetween = 25;

/** Drawn for one export, and gone with it. */
const keyBytes = 32;

export const exportForResearch = async (
  access: Access,
  folder: string,
  { hasMark }: How,
  note: Note,
): Promise<void> => {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const ids = await peopleOf(access);
  const people: PersonFacts[] = [];
  const left: Left[] = [];
  for (const [at, { id }] of ids.entries()) {
    await note(access, id);
    const facts = factsOf((await personRecordOf(access, id))!);
    if (typeof facts === 'string') left.push(facts);
    else people.push(facts);
    if ((at + 1) % peopleBetween === 0 || at + 1 === ids.length) say(`${at + 1} of ${ids.length} people`);
  }
  const key = randomBytes(keyBytes);
  for (const { name, text } of researchFiles({ people, left, key, day: access.day, hasMark })) {
    writeFileSync(path.join(folder, name), text, { flag: 'wx' });
    console.log(path.join(folder, name));
  }
};
