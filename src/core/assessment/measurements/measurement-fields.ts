/** The form of each measurement, as plain data: it goes to the browser. */
import type { Field } from '#core/calculations/describe.ts';
import type { AnyMeasure } from '../measures/measure.ts';
import { measures } from '../measures/registry.ts';
import type { Measurement } from './measurement.ts';

export interface MeasurementForm {
  readonly kind: Measurement['kind'];
  readonly title: string;
  readonly fields: readonly Field[];
  readonly needsLicence: boolean;
  /** Nobody expects it of everyone. */
  readonly isChosen: boolean;
  readonly usual: NonNullable<AnyMeasure['usual']>;
  readonly hints: NonNullable<AnyMeasure['hints']>;
}

const day = { name: 'day', kind: 'day' } as const;

/** Every row says first what it measures, and on which day. */
export const measurementForms: readonly MeasurementForm[] = measures.map(
  ({ kind, title, fields, usual = [], hints = {}, needsLicence, isChosen }) => ({
    kind,
    title,
    needsLicence: needsLicence === true,
    isChosen: isChosen === true,
    fields: [{ name: 'kind', kind: 'enum', values: [kind] }, day, ...fields],
    usual,
    hints,
  }),
);

export const measurementForm = (kindOf: string): MeasurementForm | undefined =>
  measurementForms.find((form) => form.kind === kindOf);
