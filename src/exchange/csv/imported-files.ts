/** What was imported, in the columns that an import takes, so that it can be taken in elsewhere as it stands. */
import type { RecordRows } from '#data/patients/record-tables.ts';
import { columns } from '../import/csv/columns.ts';
import type { CsvKind } from '../import/csv/how.ts';
import { type Cell, csvLines } from './cells.ts';

type Row = RecordRows['imported_row'][number];
type Cells = Readonly<Record<string, Cell>>;

const kinds: Readonly<Record<CsvKind, Row['kind']>> = {
  sessions: 'session',
  mornings: 'morning',
  measurements: 'measurement',
};

const cellsOf = ({ day, value }: Row): Cells => {
  if ('text' in value) return { day };
  if (!('what' in value)) {
    if (!('exercise' in value)) return { day, ...value, stiffness_minutes: value.stiffnessMinutes };
    const {
      loadKg: load_kg,
      painBefore: pain_before,
      painDuring: pain_during,
      painAfter: pain_after,
    } = value;
    return { day, ...value, load_kg, pain_before, pain_during, pain_after };
  }
  if (value.what === 'body-mass') return { day, weight_kg: value.massKg };
  if (value.what === 'stature') return { day, height_cm: value.statureCm };
  if (value.what === 'blood-pressure')
    return { day, systolic_mmhg: value.systolicMmhg, diastolic_mmhg: value.diastolicMmhg };
  if (value.what === 'grip') return { day, [`grip_${value.side}_kg`]: value.forceKg };
  return { day, pain: value.pain, pain_place: value.place };
};

/** Batches taken back are in the table of all imported rows and not in these. */
export const importedFiles = ({
  imported_row: rows,
  import_undo: undone,
}: Pick<RecordRows, 'imported_row' | 'import_undo'>): readonly {
  readonly name: string;
  readonly text: string;
}[] => {
  const back = new Set(undone.map(({ batchId }) => batchId));
  return (Object.keys(kinds) as CsvKind[]).flatMap((kind) => {
    const own = rows.filter((row) => row.kind === kinds[kind] && !back.has(row.batchId));
    if (own.length === 0) return [];
    const names = columns[kind].map(({ name }) => name);
    const lines = own.map((row) => {
      const cells = cellsOf(row);
      return names.map((name) => cells[name] ?? null);
    });
    return [{ name: `imported-${kind}.csv`, text: csvLines([names, ...lines]) }];
  });
};
