/**
 * What a client component is given, as one text. The framework writes and reads a value given to it part by part,
 * once for the page and once for what the browser goes on with; a text it hands over whole, at a tenth of the cost.
 */
export type AsText<T> = string & { readonly holds?: T };

export const asText = <T>(value: T): AsText<T> => JSON.stringify(value) as AsText<T>;

export const fromText = <T>(text: AsText<T>): T => JSON.parse(text) as T;
