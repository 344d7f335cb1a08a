/** The demo as others are given it: for research, and to another program; with the exports, because all need its file. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { interfaceDocument } from '#api/programs/document.ts';
import { exported } from '#api/programs/exported.ts';
import { run as exportRecords } from '#commands/exchange/export.ts';
import { openStore } from '#data/open-store.ts';
import { peopleOf } from '#data/patients/people.ts';
import { otherClinicStory } from '#demo/other-clinic.ts';
import { stories } from '#demo/patients.ts';
import { personRecordOf } from '#exchange/person-record.ts';
import { factsOf, type PersonFacts } from '#exchange/research/facts.ts';
import type { InterfaceDocument } from '#tests/api/programs/breaks.ts';
import { faultsOf } from '#tests/api/programs/program.ts';
import { attacksOn, inWords } from '#tests/exchange/research/attacks.ts';
import { asProgram } from '#tests/support/callers.ts';
import { runHere } from '#tests/support/command-here.ts';

interface Files {
  readonly file: string;
  readonly out: (name: string) => string;
}

export const demoForOthers = ({ file, out }: Files): unknown =>
  describe('the demo as others are given it', () => {
    it('writes each clinic for research with nobody named and nobody told apart from fewer than five', async () => {
      const to = out('research');
      expect(
        await runHere(exportRecords, ['--clinic', '--format', 'csv', '--de-identified', '--out', to], {
          DATABASE_FILE: file,
        }),
      ).toMatchObject({
        code: 0,
      });
      for (const clinic of readdirSync(to)) {
        const texts = readdirSync(path.join(to, clinic)).map((name) =>
          readFileSync(path.join(to, clinic, name), 'utf8'),
        );
        for (const { id, person } of [...stories, otherClinicStory])
          for (const name of [id, person.familyName]) expect(texts.join('\n')).not.toContain(name);
        const rows: Record<string, string>[] = parse(readFileSync(path.join(to, clinic, 'people.csv')), {
          columns: true,
        });
        const classOf = (row: Record<string, string>) =>
          [row.sex, row.ageBand, row.joint, row.diagnosis].join('|');
        for (const row of rows)
          expect(rows.filter((one) => classOf(one) === classOf(row)).length).toBeGreaterThanOrEqual(5);
      }
    });

    it('re-links nobody of the demo by its export for research more than twice as well as guessing', async () => {
      const store = openStore(file);
      const access = {
        ...{ store, auditKey: Buffer.alloc(32), clinicId: 'demo-clinic', actorId: 'x', actorName: 'x' },
        ...{ now: 0, day: '2026-03-02' },
      };
      const facts: PersonFacts[] = [];
      for (const { id } of await peopleOf(access)) {
        const one = factsOf((await personRecordOf(access, id))!);
        if (typeof one !== 'string') facts.push(one);
      }
      store.close();
      for (const outcome of attacksOn(facts)) {
        console.log(`demo: ${inWords(outcome)}`);
        expect(outcome.found).toBeLessThanOrEqual(outcome.guessed * 2);
      }
    });

    it('tells a program of every story what the document of its interface says', async () => {
      const store = openStore(file);
      const now = Date.parse('2026-04-20T10:00:00Z');
      const program = asProgram({
        ...{ store, auditKey: Buffer.alloc(32), clinicId: 'demo-clinic', actorId: 'x', actorName: 'x' },
        ...{ now, day: '2026-04-20' },
      }).programs;
      const document: InterfaceDocument = JSON.parse(JSON.stringify(interfaceDocument()));
      const faults = (name: string, answer: unknown) =>
        faultsOf(document, name, JSON.parse(JSON.stringify(answer)));
      const people = await program.people({});
      expect([people.rows.length, faults('People', people)]).toEqual([stories.length, null]);
      expect(faults('Worklist', await program.worklist({}))).toBeNull();
      for (const { id: patientId } of people.rows)
        for (const { procedure } of exported.filter(({ path: at }) => at.includes('{patientId}'))) {
          const ask = program[procedure] as (input: object) => Promise<unknown>;
          const name = `${procedure[0]!.toUpperCase()}${procedure.slice(1)}`;
          expect([patientId, procedure, faults(name, await ask({ patientId }))]).toEqual([
            patientId,
            procedure,
            null,
          ]);
        }
      store.close();
    });
  });
