/** What two other libraries say of a Bundle, as far as each of them sees. */
import { createRequire } from 'node:module';
import type { Bundle } from 'fhir/r4';

// Both are loaded as they are meant to be: one's module entry is broken, the other has none.
const load = createRequire(import.meta.url);
const { Fhir } = load('fhir') as {
  Fhir: new () => {
    validate: (
      bundle: unknown,
      options: object,
    ) => { valid: boolean; messages: { severity: string; message: string; location: string }[] };
  };
};
const strict = load('@solarahealth/fhir-r4') as Record<
  string,
  () => { safeParse: (value: unknown) => { success: boolean; error?: { issues: unknown[] } } }
>;
const schemas = new Map<string, ReturnType<(typeof strict)[string]>>();

const schemaOf = (type: string) => {
  const known = schemas.get(type) ?? strict[`create${type}Schema`]!();
  schemas.set(type, known);
  return known;
};

/** Strict on codes, blind to dates and ids. */
export const faultsByCodes = (bundle: Bundle): readonly string[] =>
  new Fhir()
    .validate(bundle, { errorOnUnexpected: true })
    .messages.filter(({ severity }) => severity === 'error')
    .map(({ location, message }) => `${location}: ${message}`);

/** Strict on types, resource by resource; blind to some codes and to references. */
export const faultsByTypes = (bundle: Bundle): readonly string[] =>
  (bundle.entry ?? []).flatMap(({ resource }) => {
    const { success, error } = schemaOf(resource!.resourceType).safeParse(resource);
    return success ? [] : [`${resource!.resourceType}/${resource!.id}: ${JSON.stringify(error?.issues[0])}`];
  });
