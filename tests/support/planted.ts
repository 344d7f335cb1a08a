/** Inputs with marked values in every field, from the schemas and descriptors the procedures themselves use. */
import { appRouter } from '#api/root.ts';
import { measurementForms } from '#core/assessment/measurements/measurement-fields.ts';
import type { Field } from '#core/calculations/describe.ts';
import { limitFields, preApprovalFields } from '#core/episode/care-fields.ts';
import { eventFields } from '#core/episode/event-fields.ts';
import { lowLoadRequestFields } from '#core/prescribing/dose-request.ts';
import { morningEntryFields } from '#core/record/entries.ts';
import { detailChangeFields, newPatientFields } from '#core/record/patient-details.ts';
import {
  baselineFields,
  careProfileFields,
  clearanceFields,
  effusionFields,
  programmeFields,
  responseFields,
  screeningFields,
} from '#core/record/staff-fields.ts';

/** Found nowhere else; short enough for every bounded text. */
export const markedText = 'Zqxmark';
export const markedNumber = 73_198_521.25;

/** "taken": the texts are marked and the rest fits. "refused": everything is marked. */
export type Planting = 'taken' | 'refused';

const knownTexts: Readonly<Record<string, string>> = {
  day: '2026-03-02',
  birthDay: '1961-04-09',
  until: '2026-03-05',
  phone: '020 913 0199',
  email: 'zqxmark@test.invalid',
  emergencyPhone: '020 913 0198',
};

const plantField = (field: Field, how: Planting): unknown => {
  if (field.kind === 'list') return [plantField(field.of, how)];
  if (field.kind === 'record') return plantFields(field.fields, how);
  if (field.kind === 'day' && how === 'taken') return knownTexts[field.name] ?? '2026-01-02';
  if (field.kind === 'date-time' && how === 'taken') return '2026-01-02T10:30';
  if (field.kind === 'day' || field.kind === 'date-time') return markedText;
  if (field.kind === 'text') {
    const known = how === 'taken' ? knownTexts[field.name] : undefined;
    return known ?? markedText.slice(0, field.maxLength);
  }
  if (how === 'refused') return field.kind === 'enum' || field.kind === 'flag' ? markedText : markedNumber;
  if (field.kind === 'enum') return field.values[0];
  if (field.kind === 'flag') return true;
  return Math.ceil(field.min ?? 1);
};

const plantFields = (fields: readonly Field[], how: Planting): Record<string, unknown> =>
  Object.fromEntries(fields.map((field) => [field.name, plantField(field, how)]));

/** What the procedures check by descriptor, under the name it is sent by. */
const described: Readonly<Record<string, readonly Field[]>> = {
  patient: newPatientFields,
  profile: careProfileFields,
  screening: screeningFields,
  clearance: clearanceFields,
  response: responseFields,
  baseline: baselineFields,
  effusion: effusionFields,
  programme: programmeFields,
  limit: limitFields,
  event: eventFields,
  preApproval: preApprovalFields,
  request: lowLoadRequestFields,
  entry: morningEntryFields,
  measurement: measurementForms[0]!.fields,
};

interface Schema {
  readonly def: {
    readonly type: string;
    readonly shape?: Readonly<Record<string, Schema>>;
    readonly innerType?: Schema;
    readonly in?: Schema;
    readonly element?: Schema;
  };
}

const plantSchema = (name: string, schema: Schema, how: Planting): unknown => {
  const { type, shape, innerType, element } = schema.def;
  if (shape) return plantShape(shape, how);
  const inner = innerType ?? schema.def.in;
  if (inner) return plantSchema(name, inner, how);
  switch (type) {
    case 'string':
      return name === 'email' && how === 'taken'
        ? `${markedText}@test.invalid`
        : `${markedText} ${markedText}`;
    case 'number':
      return markedNumber;
    case 'boolean':
      return how === 'taken' ? true : markedText;
    case 'array':
      return element ? [plantSchema(name, element, how)] : [markedText];
    case 'record':
      return { [markedText]: markedNumber };
    case 'unknown':
      if (name === 'changes') return plantFields(detailChangeFields, how).changes;
      return described[name] ? plantFields(described[name], how) : { [markedText]: markedText };
    default:
      return markedText;
  }
};

const plantShape = (shape: Readonly<Record<string, Schema>>, how: Planting): Record<string, unknown> =>
  Object.fromEntries(Object.entries(shape).map(([name, schema]) => [name, plantSchema(name, schema, how)]));

interface Built {
  readonly _def: { readonly inputs?: readonly Schema[] };
}

/** The marked input of a procedure; `fixed` stands for fields that must fit, such as the patient's id. */
export const planted = (path: string, how: Planting, fixed: Record<string, unknown>): unknown => {
  const built = (appRouter._def.procedures as unknown as Record<string, Built>)[path];
  const inputs = built?._def.inputs ?? [];
  return Object.assign({}, ...inputs.map((schema) => plantSchema('', schema, how)), fixed);
};
