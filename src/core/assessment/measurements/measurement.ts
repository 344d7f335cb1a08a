/** Measurements of a patient. Each has unit, method, who and when; the kind fixes unit and bounds. */

import type { RowOf } from '../measures/measure.ts';
import type { measures } from '../measures/registry.ts';

type Known = (typeof measures)[number];

/** A row of each measure on the list. */
export type Measurement = { [M in Known as M['kind']]: RowOf<M['kind'], M['fields']> }[Known['kind']];

export type MeasurementOf<K extends Measurement['kind']> = Extract<Measurement, { readonly kind: K }>;
