/** When somebody to be added looks like a patient on record. */
import { describe, expect, it } from 'vitest';
import { sameSigns } from '#core/record/same-person.ts';

const known = { givenName: 'Ottoline', familyName: 'Fennimore', birthDay: '1957-11-02' };
const signs = (over: object, other: object = {}) => sameSigns({ ...known, ...over }, { ...known, ...other });

describe('the same day of birth and a similar name', () => {
  it.each([
    ['the same name', {}],
    ['accents, capitals, hyphens and spaces apart', { givenName: ' OTTO-LÎNE ' }],
    ['given and family name exchanged', { givenName: 'Fennimore', familyName: 'Ottoline' }],
    ['one letter more', { familyName: 'Fennimorre' }],
    ['one letter fewer', { familyName: 'Fenimore' }],
    ['one letter another', { givenName: 'Ottolene' }],
    ['two neighbours exchanged', { familyName: 'Fennimoer' }],
    ['exchanged names and one letter another', { givenName: 'Fennimora', familyName: 'Ottoline' }],
  ])('%s looks the same', (_name, over) => {
    expect(signs(over)).toEqual(['birth-and-name']);
  });

  it.each([
    ['two letters another', { familyName: 'Fannimora' }],
    ['one letter in each name', { givenName: 'Ottolina', familyName: 'Fennimora' }],
    ['letters exchanged that are no neighbours', { familyName: 'Fennimero' }],
    ['another day of birth', { birthDay: '1957-11-03' }],
  ])('%s does not', (_name, over) => {
    expect(signs(over)).toEqual([]);
  });
});

describe('what reaches a person', () => {
  const other = { givenName: 'Anna', familyName: 'Zeller', birthDay: '1970-01-01' };
  it.each([
    ['phone', { phone: '020 913 0100' }, { phone: '+44 (20) 913-0100' }],
    ['email', { email: 'Ann@Example.org' }, { email: 'ann@example.org' }],
    ['patient-number', { patientNumber: 'lg 7' }, { patientNumber: 'LG7' }],
  ])('the same %s is a sign by itself, however it is written', (sign, one, two) => {
    expect(signs(one, { ...other, ...two })).toEqual([sign]);
  });

  it.each([
    ['another digit', { phone: '020 913 0100' }, { phone: '020 913 0101' }],
    ['nothing on either side', { phone: null, email: '', patientNumber: null }, { phone: null }],
  ])('%s is none', (_name, one, two) => {
    expect(signs(one, { ...other, ...two })).toEqual([]);
  });
});
