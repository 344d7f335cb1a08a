/**
 * A form sent before its page has come alive is sent by the browser itself. It goes to a route that takes it through
 * the same procedure; what cannot be taken so waits for the scripts and says why here. With the method left out it
 * would put what was typed, a passphrase too, into the address and from there into histories.
 */
import { describe, expect, it } from 'vitest';
import { aboutName, confirmedName, proofName } from '#api/inputs/posted-form.ts';
import { postedForms } from '../../src/app/forms/[form]/posted-forms.ts';
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
    'src/ui/clinician/notes/notes-screen.tsx',
    'Notes of one person found by their words; works without scripts.',
  ],
  [
    'src/ui/clinician/groups/roster-screen.tsx',
    'Who may join a group hour, found by name; works without scripts.',
  ],
  [
    'src/ui/clinician/review/known-then/known-then-screen.tsx',
    'A day and a time to look back at: nothing is kept; works without scripts.',
  ],
  [
    'src/ui/clinician/what-if/patient-what-if.tsx',
    'Values to try in a look back: nothing is kept; works without scripts.',
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

const shared = {
  opened: 'Its fields are shown by a press that scripts answer, so there is nothing to send before.',
  looked: 'What it would do is worked out and shown first, and only then can it be saved.',
  draft: 'What is typed is kept as a draft with each key, and the step is worked out from the page.',
} as const;

/** Forms whose button waits for the scripts, each with its reason. Shorter is better. */
const waiting: ReadonlyMap<string, string> = new Map([
  ['src/ui/account/codes-set-up.tsx', 'The secret and its picture stay in the page between the two steps.'],
  ['src/ui/account/passkeys-section.tsx', 'Only a script may ask the device for a passkey.'],
  ['src/ui/admin/clinic/clinic-texts.tsx', shared.opened],
  ['src/ui/admin/clinic/monitoring-hours-form.tsx', shared.opened],
  ['src/ui/admin/questionnaire-form.tsx', 'Questions are added and removed by scripts.'],
  ['src/ui/admin/settings/setting-row.tsx', shared.looked],
  ['src/ui/admin/settings/version-3-part.tsx', shared.looked],
  ['src/ui/clinician/access/record-file-form.tsx', 'A script saves the file in the browser.'],
  ['src/ui/clinician/calculations/try-form.tsx', 'Keeps nothing: what it works out is shown beside it.'],
  ['src/ui/clinician/corrections/correct-form.tsx', shared.opened],
  ['src/ui/clinician/data-entry/data-entry-form.tsx', 'What it asks follows from the first answers.'],
  ['src/ui/clinician/first-visit/exercise-step.tsx', shared.draft],
  ['src/ui/clinician/first-visit/step-frame.tsx', shared.draft],
  [
    'src/ui/clinician/groups/sealed/pin-form.tsx',
    'The PIN opens what this browser holds sealed, and is sent nowhere.',
  ],
  [
    'src/ui/clinician/groups/sealed/take-along.tsx',
    'The hour is sealed in this browser under the PIN, which is sent nowhere.',
  ],
  ['src/ui/clinician/groups/other-set.tsx', shared.opened],
  ['src/ui/clinician/imports/import-form.tsx', 'A script reads the file, and it is looked through first.'],
  ['src/ui/clinician/pre-visit/confirm-form.tsx', 'Only what differs from what the patient said is sent.'],
  ['src/ui/clinician/prescribing/dose-form.tsx', shared.looked],
  ['src/ui/clinician/programme/planner-form.tsx', 'The week is judged while days are switched.'],
  [
    'src/ui/clinician/rules/invented/invented-people.tsx',
    'Keeps nothing: what it works out is shown beside it.',
  ],
  ['src/ui/clinician/screening/clearance-form.tsx', 'What may be cleared follows from the method chosen.'],
  ['src/ui/clinician/screening/screening-form.tsx', 'What an answer asks further follows from it.'],
  [
    'src/ui/clinician/what-if/clinic-what-if.tsx',
    'Keeps nothing: it is worked out beside the page, which shows how far it is.',
  ],
  ['src/ui/clinician/worklist/row-forms.tsx', shared.opened],
  [
    'src/ui/patient/messages/message-form.tsx',
    'It is sealed on the phone, also without signal, before it is sent.',
  ],
  [
    'src/ui/patient/pre-visit/visit-question.tsx',
    'One page holds all questions and seals them on the phone.',
  ],
]);

const sources = allFiles().filter((file) => /^src\/.*\.tsx?$/.test(file));
const screens = sources.filter((file) => file.endsWith('.tsx'));
const kinds = ['posted-form', 'scripted-form'].map((name) => `src/ui/design-system/posted/${name}.tsx`);

const tags = screens.flatMap((file) =>
  [...textOf(file).matchAll(/<form\b[^>]*/g)].map(([tag]) => ({ file, tag })),
);

describe('no form puts what was typed into an address', () => {
  it('is one of two kinds, both sent by post, unless it is a search', () => {
    expect(tags.map(({ file }) => file)).toEqual(expect.arrayContaining(kinds));
    const wrong = tags.filter(
      ({ file, tag }) =>
        !(kinds.includes(file) && /method="post"/.test(tag)) &&
        !(searches.has(file) && /method="get"/.test(tag)),
    );
    expect(wrong).toEqual([]);
  });
});

describe('a form sent before its page’s scripts have come', () => {
  it('goes to a route of its own, or waits with a reason', () => {
    const found = screens.filter(
      (file) => /<(ScriptedForm|FormFrame)\b/.test(textOf(file)) && !file.endsWith('/forms/form-frame.tsx'),
    );
    expect(found.toSorted()).toEqual([...waiting.keys()].toSorted());
  });

  it('finds the route that takes it', () => {
    const lists = ['src/ui/clinician/forms/sent/sent-forms.ts', 'src/app/forms/[form]/posted-forms.ts'];
    const listed = lists.map(textOf).join('\n');
    const described = sources.flatMap((file) =>
      [...textOf(file).matchAll(/export const (\w+)(?:: (?:SentForm|AskedForm)\b| = patientForm\()/g)].map(
        ([, name = '']) => name,
      ),
    );
    expect(described.length).toBeGreaterThan(20);
    expect(described.filter((name) => !new RegExp(`\\b${name}\\b`).test(listed))).toEqual([]);
    const named = screens.flatMap((file) =>
      [...textOf(file).matchAll(/<PostedForm\s+form="([^"]+)"/g)].map(([, name = '']) => name),
    );
    expect(named.length).toBeGreaterThan(4);
    expect(named.filter((name) => !postedForms.has(name))).toEqual([]);
  });

  it.each([...postedForms])('%s leads to a page of ours', (_, form) => {
    const about = Object.fromEntries(form.about.map((name) => [name, 'x']));
    expect(form.page(about)).toMatch(/^\/[a-z]/);
  });

  it.each([...postedForms])('%s shows no passphrase, PIN or code again', (name, form) => {
    const about = Object.fromEntries(form.about.map((one) => [one, 'x']));
    const secrets = ['passphrase', 'pin', 'again', 'current', 'next', 'recovery', proofName, confirmedName];
    const sent = new URLSearchParams(secrets.map((one) => [one, 'secret']));
    if (name === 'sign-in-code') sent.append('code', 'secret');
    sent.append(aboutName('patientId'), 'secret');
    expect(JSON.stringify(form.typedIn(sent, about))).not.toContain('secret');
  });
});
