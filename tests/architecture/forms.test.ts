/**
 * A form sent before its page has come alive is sent by the browser itself. With the method left
 * out it would put what was typed, a passphrase too, into the address and from there into histories.
 */
import { describe, expect, it } from 'vitest';
import { allFiles, textOf } from './repository.ts';

/** Searches that are meant to stand in the address, each with its reason. */
const searches: ReadonlyMap<string, string> = new Map([
  [
    'src/ui/clinician/patients/patients-screen.tsx',
    'The list of patients narrowed by name; works without scripts.',
  ],
  [
    'src/ui/design-system/search/search-form.tsx',
    'Settings, calculations and rules by words: nothing of a patient is typed; works without scripts.',
  ],
  [
    'src/ui/clinician/worklist/worklist-filter-form.tsx',
    'The worklist narrowed by kind; works without scripts.',
  ],
  [
    'src/ui/clinician/reception/reception-screen.tsx',
    'The front desk’s people found by name; works without scripts.',
  ],
  [
    'src/ui/clinician/prescribing/choose/picker-form.tsx',
    'Exercises by name, joint and muscle: nothing of the patient is typed; works without scripts.',
  ],
]);

const forms = allFiles()
  .filter((file) => /^src\/.*\.tsx$/.test(file))
  .flatMap((file) => [...textOf(file).matchAll(/<form\b[^>]*/g)].map(([tag]) => ({ file, tag })));

describe('no form puts what was typed into an address', () => {
  it('says how it is sent, and sends by post unless it is a search', () => {
    expect(forms.length).toBeGreaterThan(10);
    const wrong = forms.filter(
      ({ file, tag }) => !/method="post"/.test(tag) && !(searches.has(file) && /method="get"/.test(tag)),
    );
    expect(wrong).toEqual([]);
  });
});
