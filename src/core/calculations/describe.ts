/**
 * Input descriptors: what a calculation takes, as plain data.
 *
 * One function outside the core turns a descriptor into a zod schema, one into JSON Schema;
 * forms, procedures and the desk all read the same rows. Rules that cross fields (diastolic
 * below systolic) are core functions that return refusals, never a second schema.
 */

interface FieldBase {
  readonly name: string;
  /** Left out means required. An absent optional value is "not given", never zero. */
  readonly optional?: boolean;
  /** null is a legal value and means "asked and not answered". */
  readonly nullable?: boolean;
  /** Further literal values allowed beside the kind, such as "not-applicable". */
  readonly also?: readonly string[];
  /** Asked only while another field beside it holds one of these values; otherwise it is not given. */
  readonly onlyWhen?: { readonly field: string; readonly is: readonly string[] };
  /** What the field means, for people filling it in. */
  readonly about?: string;
}

export interface NumberField extends FieldBase {
  readonly kind: 'number' | 'integer';
  /** UCUM code, or '1' for a pure number. */
  readonly unit: string;
  readonly min?: number;
  readonly max?: number;
  /** The minimum itself is refused. */
  readonly exclusiveMin?: boolean;
}

export interface EnumField extends FieldBase {
  readonly kind: 'enum';
  readonly values: readonly string[];
}

/** Free text, such as a reason; never used by a calculation. */
interface TextField extends FieldBase {
  readonly kind: 'text';
  readonly minLength?: number;
  readonly maxLength: number;
}

/** A civil day, YYYY-MM-DD, one that exists in the calendar. */
interface DayField extends FieldBase {
  readonly kind: 'day';
  /** A day people know by heart and no calendar is looked at for. */
  readonly isBirth?: true;
}

/** A civil day with a time of day, YYYY-MM-DDTHH:MM. */
interface DateTimeField extends FieldBase {
  readonly kind: 'date-time';
  /** The day alone, YYYY-MM-DD, is enough. */
  readonly mayLackTime?: true;
}

/** Yes or no; null, where it may be, is neither. */
export interface FlagField extends FieldBase {
  readonly kind: 'flag';
}

export interface ListField extends FieldBase {
  readonly kind: 'list';
  /** The shape of one element; its `name` is ignored. */
  readonly of: Field;
  readonly minItems?: number;
  readonly maxItems?: number;
}

export interface RecordField extends FieldBase {
  readonly kind: 'record';
  readonly fields: readonly Field[];
}

export type Field =
  | NumberField
  | EnumField
  | TextField
  | DayField
  | DateTimeField
  | FlagField
  | ListField
  | RecordField;

/** The value type a list of fields describes; used so that a calculation's input is typed from its descriptor. */
type ValueOf<F extends Field> =
  | (F extends { kind: 'number' | 'integer' }
      ? number
      : F extends { kind: 'enum'; values: readonly (infer V)[] }
        ? V
        : F extends { kind: 'flag' }
          ? boolean
          : F extends { kind: 'text' | 'day' | 'date-time' }
            ? string
            : F extends { kind: 'list'; of: infer E extends Field }
              ? readonly ValueOf<E>[]
              : F extends { kind: 'record'; fields: infer R extends readonly Field[] }
                ? InputOf<R>
                : never)
  | (F extends { nullable: true } ? null : never)
  | (F extends { also: readonly (infer A)[] } ? A : never);

type RequiredNames<R extends readonly Field[]> = Exclude<R[number], { optional: true }>;
type OptionalNames<R extends readonly Field[]> = Extract<R[number], { optional: true }>;

export type InputOf<R extends readonly Field[]> = {
  readonly [F in RequiredNames<R> as F['name']]: ValueOf<F>;
} & {
  readonly [F in OptionalNames<R> as F['name']]?: ValueOf<F>;
};
