/** The page of imported days: everything on it is marked as imported, and a file is said before it is read. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it, vi } from 'vitest';
import { inputOf, missingIn, nothingTyped } from '#ui/clinician/imports/import-input.ts';
import { ImportReport } from '#ui/clinician/imports/import-report.tsx';
import { importedInWords } from '#ui/clinician/imports/imported-words.ts';
import { ImportsScreen, type ImportsScreenProps } from '#ui/clinician/imports/imports-screen.tsx';
import { useImport } from '#ui/clinician/imports/use-import.ts';

vi.mock('next/navigation', () => ({ useRouter: () => ({ refresh: () => undefined }) }));

const batch: ImportsScreenProps['imports'][number] = {
  format: 'csv',
  ...{ id: 'b', source: 'diary.csv', fileDigest: 'd', how: {}, rows: 20, leftOut: 1 },
  ...{ recordedAt: 0, byName: 'Nuala D', undone: null },
};
const row = { id: 'r', batchId: 'b', place: 2, kind: 'morning', day: '2026-02-01' } as const;
const morning = { joint: 'right-knee', pain: 0, stiffnessMinutes: null, fatigue: 2 } as const;

const textOf = (over: Partial<ImportsScreenProps> = {}) =>
  renderToStaticMarkup(
    <ImportsScreen
      patientId="p"
      imports={[batch]}
      rows={[{ ...row, value: morning }]}
      usual={[
        {
          ...{ joint: 'right-knee', medianPain: 2, mornings: 7 },
          ...{ firstDay: '2026-02-01', lastDay: '2026-02-07' },
        },
      ]}
      when={() => '2 March'}
      {...over}
    />,
  )
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');

describe('the page of imported days', () => {
  it('says that no rule reads them, and that what they show of usual pain sets nothing', () => {
    const text = textOf();
    for (const words of ['No rule reads them', 'nothing is set by it', 'Imported entries, newest first'])
      expect(text).toContain(words);
    expect(text).toContain('20 entries, by Nuala D. Left out: 1.');
  });

  it('says what the file said and no more: a zero stays, what was not answered is left out', () => {
    expect(importedInWords(morning)).toBe('right knee, pain 0, tiredness 2');
    expect(importedInWords({ what: 'blood-pressure', systolicMmhg: 120, diastolicMmhg: 80 })).toBe(
      'blood pressure 120/80 mmHg',
    );
  });

  it('offers to take back what stands, and says of the rest who took it back and why', () => {
    expect(textOf()).toContain('Take back the whole import');
    const undone = { ...batch, undone: { at: 0, by: 'Nuala D', reason: 'Wrong person' } };
    const text = textOf({ imports: [undone], rows: [], usual: [] });
    expect(text).toContain('Taken back 2 March by Nuala D: Wrong person');
    expect(text).not.toContain('Take back the whole import');
  });

  it('asks how a table is written, and chooses nothing by itself', () => {
    const file = { name: 'a.csv', base64: '' };
    expect(missingIn(nothingTyped).map(({ field }) => field)).toEqual(['file', 'format']);
    expect(missingIn({ ...nothingTyped, file, format: 'csv' }).map(({ field }) => field)).toEqual([
      ...['kind', 'separator', 'encoding', 'days', 'decimal'],
    ]);
    const typed = { ...nothingTyped, file, format: 'lines' } as const;
    expect(missingIn(typed)).toEqual([]);
    expect(inputOf('p', typed, { confirmed: [], leavesOutFaulty: false })).toMatchObject({
      ...{ patientId: 'p', name: 'a.csv', format: 'fhir', isLines: true },
    });
  });
});

it('what was found is told before anything is taken: columns, questions, rows, and what is in the way', () => {
  const html = renderToStaticMarkup(
    <ImportReport
      looked={{
        mapped: [{ name: 'day', heading: 'Datum', isGuessed: true }],
        notTaken: ['Notiz'],
        report: {
          ...{ read: 3, taken: 2, byKind: { morning: 2 }, firstDay: '2026-02-01', lastDay: '2026-02-02' },
          ...{ faultCount: 101, faultyPlaces: 1, fileDigest: 'd' },
          questions: [{ id: 'unlikely', about: 'Are they right?', count: 1, examples: ['Row 3: 95 kg'] }],
        },
        faults: [{ place: 4, at: 'Schmerz', found: '12', write: 'A whole number from 0 to 10.' }],
        why: ['Say the columns.'],
      }}
      confirmed={[]}
      onConfirm={() => undefined}
    />,
  );
  for (const words of [
    ...['2 entries can be taken', 'found by its heading', 'Nothing is taken of: Notiz', 'Row 3: 95 kg'],
    ...['A whole number from 0 to 10.', 'And 100 more.', 'Say the columns.'],
  ])
    expect(html).toContain(words);
});

const answers: object[] = [];
const AnsweredThenTyped = () => {
  const { confirm, setLeavesOut, type, confirmed, leavesOutFaulty } = useImport('p');
  answers.push({ confirmed, leavesOutFaulty });
  if (answers.length === 1) {
    confirm('day-order', true);
    setLeavesOut(true);
  }
  if (answers.length === 2) type({ ...nothingTyped, marks: { days: 'MM/DD/YYYY' } });
  return null;
};

it('what was answered for one file is asked anew for another, and for the same said to be written otherwise', () => {
  renderToStaticMarkup(<AnsweredThenTyped />);
  expect(answers).toEqual([
    { confirmed: [], leavesOutFaulty: false },
    { confirmed: ['day-order'], leavesOutFaulty: true },
    { confirmed: [], leavesOutFaulty: false },
  ]);
});
