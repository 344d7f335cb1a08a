/**
 * Who may open each page, and who each route answers. The guard is the first thing a page does; a
 * page or route without a row here fails the test.
 */
import { describe, expect, it } from 'vitest';
import nextConfig from '../../next.config.js';
import { allFiles, textOf } from './repository.ts';

type Who =
  | 'anybody'
  | 'signed in'
  | 'clinician'
  | 'reception'
  | 'record'
  | 'patient'
  | 'staff'
  | 'administrator';

/** What a page must call, before anything of a record is asked for. */
const guards: Readonly<Record<Who, RegExp>> = {
  anybody: /^(?![\s\S]*\b(serverCaller|clinicPage|receptionPage|recordPage|carePage)\()/,
  'signed in': /await requireAnyone\(\)/,
  clinician: /await (clinicPage\(\)|requirePerson\('clinician'\))/,
  reception: /await receptionPage\(\)/,
  record: /await (recordPage|carePage)\(params/,
  patient: /await requirePerson\('patient'\)/,
  staff: /await requirePerson\('clinician', 'administrator'\)/,
  administrator: /await requireAdministrator\(\)/,
};

const pages: Readonly<Record<string, Who>> = {
  '(account)/access-log': 'patient',
  '(account)/account': 'signed in',
  '(account)/account/codes': 'signed in',
  '(account)/administration': 'administrator',
  '(account)/administration/care': 'administrator',
  '(account)/administration/figures': 'staff',
  '(account)/administration/machines': 'administrator',
  '(account)/administration/programs': 'administrator',
  '(account)/administration/settings': 'staff',
  '(account)/emergency-access/[id]': 'clinician',
  '(account)/enrol': 'anybody',
  '(account)/incidents': 'staff',
  '(account)/pin': 'anybody',
  '(clinician)/calculations': 'clinician',
  '(clinician)/calculations/[id]': 'clinician',
  '(clinician)/groups': 'clinician',
  '(clinician)/groups/[id]': 'clinician',
  '(clinician)/groups/[id]/roster': 'clinician',
  '(clinician)/patients': 'clinician',
  '(clinician)/patients/[id]': 'record',
  '(clinician)/patients/[id]/access': 'record',
  '(clinician)/patients/[id]/care': 'record',
  '(clinician)/patients/[id]/care/appointments': 'record',
  '(clinician)/patients/[id]/care/episode': 'record',
  '(clinician)/patients/[id]/care/first-visit': 'record',
  '(clinician)/patients/[id]/care/letters': 'record',
  '(clinician)/patients/[id]/care/letters/[letter]': 'record',
  '(clinician)/patients/[id]/care/notes': 'record',
  '(clinician)/patients/[id]/care/protocol': 'record',
  '(clinician)/patients/[id]/nutrition': 'record',
  '(clinician)/patients/[id]/care/pre-visit': 'record',
  '(clinician)/patients/[id]/data-entry': 'record',
  '(clinician)/patients/[id]/handover': 'record',
  '(clinician)/patients/[id]/letter': 'record',
  '(clinician)/patients/[id]/imports': 'record',
  '(clinician)/patients/[id]/measurements': 'record',
  '(clinician)/patients/[id]/outcomes': 'record',
  '(clinician)/patients/[id]/prescribe': 'record',
  '(clinician)/patients/[id]/prescriptions': 'record',
  '(clinician)/patients/[id]/programme': 'record',
  '(clinician)/patients/[id]/review': 'record',
  '(clinician)/patients/[id]/review/known-then': 'record',
  '(clinician)/patients/[id]/review/what-if': 'record',
  '(clinician)/patients/[id]/screening': 'record',
  '(clinician)/patients/[id]/self-management': 'record',
  '(clinician)/patients/[id]/warning-signs': 'record',
  '(clinician)/patients/new': 'clinician',
  '(clinician)/rules': 'clinician',
  '(clinician)/rules/[id]': 'clinician',
  '(clinician)/rules/followed': 'clinician',
  '(clinician)/rules/what-if': 'clinician',
  '(clinician)/templates': 'clinician',
  '(clinician)/worklist': 'clinician',
  // Opens what a tablet holds sealed, and asks the clinic for nothing.
  '(hour)/group-hour': 'anybody',
  '(patient)/handout': 'patient',
  '(patient)/history': 'patient',
  '(patient)/messages': 'patient',
  '(patient)/pre-visit': 'patient',
  '(patient)/pre-visit/consents': 'patient',
  '(patient)/today': 'patient',
  '(reception)/reception': 'reception',
  '(reception)/reception/[id]': 'reception',
  '(reception)/reception/new': 'reception',
  '.': 'anybody',
  'sign-in': 'anybody',
};

/** What decides at each route. */
const routes: Readonly<Record<string, RegExp>> = {
  '(account)/administration/figures/file': /figuresFileHandler\(/,
  '(account)/incidents/file': /incidentFileHandler\(/,
  'api/auth/[...all]': /signInHandler\(/,
  'api/entries': /entriesHandler\(/,
  'api/programs/v1/[...path]': /programHandler\(/,
  'api/trpc/[trpc]': /trpcHandler\(/,
  // Whoever has the address reads it; nobody is signed in.
  'calendar/[address]': /calendarFeedHandler\(/,
  certificate: /certificateHandler\(/,
  'exports/[format]': /exportHandler\(/,
  'forms/[form]': /\bformHandler\(/,
  'papers/[kind]': /paperHandler\(/,
  // Asked from this machine only, and in the demo only.
  'demo/clock': /!at\.settings\.DEMO \|\| !isLocal\(/,
  // Say nothing of anybody.
  healthz: /new Response\('ok/,
  readyz: /readiness\(\)/,
  // A script and a list of hashed files, the same for everybody.
  'sw.js': /new Response\(/,
};

const placesOf = (name: RegExp): readonly (readonly [string, string])[] =>
  allFiles().flatMap((file) => {
    const place = name.exec(file)?.[1];
    return place === undefined ? [] : [[place === '' ? '.' : place.replace(/\/$/, ''), file] as const];
  });

const foundPages = placesOf(/^src\/app\/(.*?)page\.tsx$/);
const foundRoutes = placesOf(/^src\/app\/(.*?)route\.tsx?$/);

describe('who may open which page', () => {
  it('every page has a row, and every row a page', () => {
    expect(foundPages.map(([place]) => place).sort()).toEqual(Object.keys(pages).sort());
  });

  it.each(foundPages)('%s', (place, file) => {
    const who = pages[place]!;
    expect([place, who, guards[who].test(textOf(file))]).toEqual([place, who, true]);
  });

  it('the shared starts of clinic pages ask for a clinician themselves', () => {
    const start = textOf('src/app/(clinician)/clinic-page.ts');
    expect(start).toMatch(
      /clinicPage = async \(\) => \{\n {2}const person = await requirePerson\('clinician'\);/,
    );
    expect(start).toMatch(/recordPage = async[\s\S]*?await clinicPage\(\)/);
  });
});

describe('what decides at each route', () => {
  it('every route has a row, and every row a route', () => {
    expect(foundRoutes.map(([place]) => place).sort()).toEqual(Object.keys(routes).sort());
  });

  it.each(foundRoutes)('%s', (place, file) => {
    expect([place, routes[place]!.test(textOf(file))]).toEqual([place, true]);
  });
});

describe('addresses of earlier versions', () => {
  it('each address that may stand on paper or on a phone leads on for good to a page of a patient', async () => {
    const placeOf = (address: string) =>
      foundPages.find(([place]) => `/${place.replace(/\(\w+\)\//, '')}` === address)?.[0];
    const led = (await nextConfig.redirects?.()) ?? [];
    expect(led.map(({ source }) => source)).toEqual([
      '/join',
      '/how-it-went',
      '/write',
      '/before-visit',
      '/before-visit/agreements',
      '/who-opened',
    ]);
    for (const { source, destination, permanent } of led) {
      expect([source, permanent, placeOf(source)]).toEqual([source, true, undefined]);
      expect([destination, pages[placeOf(destination)!]]).toEqual([
        destination,
        destination === '/enrol' ? 'anybody' : 'patient',
      ]);
    }
  });
});
