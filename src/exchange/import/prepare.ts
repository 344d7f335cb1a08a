/** One file for one person, from how it was said to be written to what would be taken of it, and then taken. */
import type { Day } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { type Import, type NewImport, type PlacedThing, takeImport } from '#data/exchange/imports.ts';
import type { Clinic, Patient } from '#data/patients/people.ts';
import { checkImport, digestOfBytes, type ImportReport } from './check.ts';
import { asSaid, type Mapping } from './csv/mapping.ts';
import { type CsvAsked, csvMapping, csvSource } from './csv/read-csv.ts';
import { type FhirPerson, peopleIn, personIn } from './fhir/people.ts';
import { fhirSource } from './fhir/read-fhir.ts';
import type { QuestionId } from './questions.ts';
import type { Bytes, Fault, Source } from './source.ts';

export type Asked =
  | ({ readonly format: 'csv' } & CsvAsked)
  | { readonly format: 'fhir'; readonly isLines: boolean };

export interface File {
  readonly name: string;
  readonly bytes: Bytes;
}

export interface Whose {
  readonly patient: Pick<Patient, 'id' | 'birthDay' | 'familyName'>;
  readonly clinic: Pick<Clinic, 'zone'>;
  readonly today: Day;
}

export interface Prepared {
  readonly file: File;
  readonly asked: Asked;
  readonly source: Source;
  /** Of a CSV file alone. */
  readonly mapping: Mapping | null;
  readonly report: ImportReport;
}

interface Opened {
  readonly source: Source;
  readonly mapping: Mapping | null;
  readonly doubt: FhirPerson['doubt'];
}

const opened = async ({ bytes }: File, asked: Asked, { patient, clinic, today }: Whose): Promise<Opened> => {
  const about = { today, born: patient.birthDay };
  if (asked.format === 'csv') {
    const mapping = await csvMapping(bytes, asked);
    return { source: csvSource(bytes, asked, mapping, about), mapping, doubt: null };
  }
  const sought = { born: patient.birthDay, familyName: patient.familyName };
  const person = personIn(await peopleIn(bytes, asked.isLines), sought);
  const days = { ...about, zone: clinic.zone };
  return { source: fhirSource(bytes, asked.isLines, person, days), mapping: null, doubt: person.doubt };
};

export interface Heard {
  readonly onFault: (fault: Fault) => void;
  readonly onProgress?: (read: number) => void;
}

/** Reads the file through and takes nothing. */
export const prepareImport = async (
  file: File,
  asked: Asked,
  whose: Whose,
  heard: Heard,
): Promise<Prepared> => {
  const { source, mapping, doubt } = await opened(file, asked, whose);
  const mayBeSwapped = asked.format === 'csv' && /\//.test(asked.days);
  const report = await checkImport(file.bytes, source, {
    ...{ today: whose.today, mayBeSwapped, ...heard },
    asked: doubt === null ? [] : [['other-person', doubt]],
  });
  return { file, asked, source, mapping, report };
};

export interface Answers {
  readonly confirmed: readonly QuestionId[];
  /** Take the rest where some rows of a CSV file are wrong. */
  readonly leavesOutFaulty: boolean;
}

/** What keeps the file from being taken, each with what to do about it; empty = it may be. */
export const whyNotTaken = (
  { asked, mapping, report }: Pick<Prepared, 'asked' | 'mapping' | 'report'>,
  { confirmed, leavesOutFaulty }: Answers,
  before: readonly Import[],
): readonly string[] => {
  const guessed = mapping?.mapped.filter(({ isGuessed }) => isGuessed) ?? [];
  const open = report.questions.filter(({ id }) => !confirmed.includes(id));
  const earlier = before.find(
    ({ undone, fileDigest }) => undone === null && fileDigest === report.fileDigest,
  );
  return [
    ...(guessed.length > 0
      ? [
          `Columns were found by their headings and nobody has said them. If they are right, say: ${asSaid(mapping!.mapped)}`,
        ]
      : []),
    ...(asked.format === 'csv' && report.faultyPlaces > 0 && !leavesOutFaulty
      ? [
          `${report.faultyPlaces} of ${report.read} rows cannot be taken as they stand. Put them right in the file, or say that they are left out.`,
        ]
      : []),
    ...open.map(({ id, about, count }) => `${id} (${count}): ${about}`),
    ...(earlier ? [`This file was taken before, as "${earlier.source}". Take that import back first.`] : []),
    ...(report.taken === 0 ? ['Nothing in the file can be taken.'] : []),
  ];
};

async function* placedThings(source: Source): AsyncIterable<readonly PlacedThing[]> {
  for await (const piece of source.read())
    yield piece.flatMap(({ place, things }) => things.map((thing) => ({ ...thing, place })));
}

const howOf = ({ asked, mapping }: Prepared, confirmed: readonly string[]): NewImport['how'] => {
  const answers: NewImport['how'] = confirmed.length > 0 ? { confirmed: confirmed.join(', ') } : {};
  if (asked.format === 'fhir') return { written: asked.isLines ? 'lines' : 'bundle', ...answers };
  const { format: _format, map: _map, ...marks } = asked;
  return { ...marks, columns: asSaid(mapping?.mapped ?? []), ...answers };
};

/** Takes what was prepared; whoever calls it has asked `whyNotTaken`. Answers the batch. */
export const takePrepared = (
  access: Access,
  patientId: string,
  prepared: Prepared,
  { confirmed }: Pick<Answers, 'confirmed'>,
): Promise<string> => {
  const { file, asked, source, report } = prepared;
  const batch: NewImport = {
    ...{ format: asked.format, source: file.name, fileDigest: report.fileDigest },
    ...{ how: howOf(prepared, confirmed), rows: report.taken, leftOut: report.faultyPlaces },
  };
  const isSame = async () => (await digestOfBytes(file.bytes)) === report.fileDigest;
  return takeImport(access, patientId, batch, placedThings(source), isSame);
};
