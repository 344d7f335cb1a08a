/** What was imported, handed on as what it is: tagged, with the file it came from, and never as recorded here. */
import type { CodeableConcept, Condition, Observation, ObservationComponent } from 'fhir/r4';
import type { ImportedMeasurement, ImportedMorning, ImportedSession } from '#core/record/imported.ts';
import type { PersonRecord } from '../../person-record.ts';
import { loinc } from '../codes/loinc.ts';
import { systems, vitalSignProfile } from '../names.ts';
import { amount, bodySite, idOf, notes, own, ownCoding, subjectOf, text, withLoinc } from './parts.ts';

type Row = PersonRecord['rows']['imported_row'][number];
type Values = Pick<Observation, 'meta' | 'category' | 'valueQuantity' | 'component' | 'bodySite'> & {
  readonly code: CodeableConcept;
};

const quantity = (code: string, value: number | null, unit: string): ObservationComponent[] =>
  value === null ? [] : [{ code: own(code), valueQuantity: amount(value, unit) }];

const parts = (component: readonly ObservationComponent[]): { component?: ObservationComponent[] } =>
  component.length > 0 ? { component: [...component] } : {};

const category = (code: string): Pick<Observation, 'category'> => ({
  category: [{ coding: [{ system: systems.observationCategory, code }] }],
});

const vital = (profile: Parameters<typeof vitalSignProfile>[0]) => ({
  ...category('vital-signs'),
  meta: { profile: [vitalSignProfile(profile)] },
});

const measured = (value: ImportedMeasurement): Values => {
  const code = own(`measure.${value.what}`);
  if (value.what === 'body-mass')
    return {
      ...vital('bodyweight'),
      code: withLoinc(loinc.bodyWeight, code),
      valueQuantity: amount(value.massKg, 'kg'),
    };
  if (value.what === 'stature')
    return {
      ...vital('bodyheight'),
      code: withLoinc(loinc.bodyHeight, code),
      valueQuantity: amount(value.statureCm, 'cm'),
    };
  if (value.what === 'pain')
    return {
      ...category('survey'),
      code: withLoinc(loinc.pain, own('imported.pain')),
      valueQuantity: amount(value.pain, '{score}'),
      ...(value.place === null ? {} : { bodySite: text(value.place) }),
    };
  if (value.what === 'grip') {
    const said = { code: own('measure.grip.side'), valueString: value.side };
    return {
      ...category('exam'),
      code: value.side === 'right' ? withLoinc(loinc.gripRight, code) : code,
      valueQuantity: amount(value.forceKg, 'kg'),
      ...parts([said]),
      ...bodySite(value.side),
    };
  }
  const figure = (name: string, concept: string, mmhg: number): ObservationComponent => ({
    code: withLoinc(concept, own(`measure.blood-pressure.${name}`)),
    valueQuantity: amount(mmhg, 'mm[Hg]'),
  });
  return {
    ...vital('bp'),
    code: withLoinc(loinc.bloodPressure, code),
    ...parts([
      figure('systolicMmhg', loinc.systolic, value.systolicMmhg),
      figure('diastolicMmhg', loinc.diastolic, value.diastolicMmhg),
    ]),
  };
};

const morning = ({ joint, pain, stiffnessMinutes, fatigue }: ImportedMorning): Values => ({
  ...category('survey'),
  code: pain === null ? own('imported.morning') : withLoinc(loinc.pain, own('imported.morning')),
  ...(pain === null ? {} : { valueQuantity: amount(pain, '{score}') }),
  ...bodySite(joint),
  ...parts([
    ...quantity('morning.stiffness', stiffnessMinutes, 'min'),
    ...quantity('morning.fatigue', fatigue, '{score}'),
  ]),
});

const session = (row: ImportedSession): Values => ({
  ...category('survey'),
  code: own('imported.session'),
  ...bodySite(row.joint),
  ...parts([
    ...(row.exercise === null ? [] : [{ code: own('imported.exercise'), valueString: row.exercise }]),
    ...quantity('imported.sets', row.sets, '{set}'),
    ...quantity('set.repetitions', row.repetitions, '{rep}'),
    ...quantity('set.load', row.loadKg, 'kg'),
    ...quantity('pain.before', row.painBefore, '{score}'),
    ...quantity('pain.during', row.painDuring, '{score}'),
    ...quantity('pain.after', row.painAfter, '{score}'),
  ]),
});

const valuesOf = ({ value }: Row): Values | null => {
  if ('text' in value) return null;
  if ('what' in value) return measured(value);
  return 'exercise' in value ? session(value) : morning(value);
};

/** The file it came from, and whether the whole file was taken back. */
const aroundOf = ({ rows }: PersonRecord) => {
  const files = new Map(rows.import_batch.map(({ id, source }) => [id, source]));
  const undone = new Set(rows.import_undo.map(({ batchId }) => batchId));
  return (row: Row) => ({
    isUndone: undone.has(row.batchId),
    ...notes(`Imported from "${files.get(row.batchId) ?? ''}"; not recorded at this clinic.`),
  });
};

const tag = () => {
  const coding = ownCoding('imported');
  return coding ? { tag: [coding] } : {};
};

export const importedObservations = (record: PersonRecord): readonly Observation[] => {
  const around = aroundOf(record);
  return record.rows.imported_row.flatMap((row): Observation[] => {
    const values = valuesOf(row);
    if (values === null || row.day === null) return [];
    const { isUndone, ...noted } = around(row);
    return [
      {
        resourceType: 'Observation',
        id: idOf(row.id),
        ...values,
        meta: { ...values.meta, ...tag() },
        status: isUndone ? 'entered-in-error' : 'final',
        subject: subjectOf(record),
        effectiveDateTime: row.day,
        ...noted,
      },
    ];
  });
};

const enteredInError = {
  verificationStatus: { coding: [{ system: systems.conditionStanding, code: 'entered-in-error' }] },
};

/** As the other clinic wrote it. */
export const importedConditions = (record: PersonRecord): readonly Condition[] => {
  const around = aroundOf(record);
  return record.rows.imported_row.flatMap((row): Condition[] => {
    if (!('text' in row.value)) return [];
    const { isUndone, ...noted } = around(row);
    return [
      {
        resourceType: 'Condition',
        id: idOf(row.id),
        meta: tag(),
        ...(isUndone ? enteredInError : {}),
        code: text(row.value.text),
        subject: subjectOf(record),
        ...(row.day === null ? {} : { onsetDateTime: row.day }),
        ...noted,
      },
    ];
  });
};
