/** The five places of a record, and the pages of each; a place opens on its first page. */
import { say } from '#messages/en/staff/record.ts';

export const places = [
  { name: 'Summary', pages: [{ path: '', text: 'Summary' }] },
  {
    name: 'Plan',
    pages: [
      { path: '/prescriptions', text: 'Prescriptions' },
      { path: '/prescribe', text: 'Prescribe' },
      { path: '/programme', text: 'Programme' },
    ],
  },
  {
    name: 'Review',
    pages: [
      { path: '/review', text: 'Review' },
      { path: '/data-entry', text: say('data-entry') },
      { path: '/imports', text: say('imported-days') },
    ],
  },
  {
    name: 'Assessment',
    pages: [
      { path: '/screening', text: 'Screening' },
      { path: '/measurements', text: 'Measurements' },
      { path: '/outcomes', text: 'Outcomes' },
      { path: '/nutrition', text: 'Nutrition' },
      { path: '/care/pre-visit', text: say('pre-visit') },
      { path: '/care/first-visit', text: say('first-visit') },
    ],
  },
  {
    name: 'Care',
    pages: [
      { path: '/care', text: say('consents-and-limits') },
      { path: '/care/notes', text: 'Notes' },
      { path: '/care/protocol', text: say('protocol') },
      { path: '/care/letters', text: 'Letters' },
      { path: '/warning-signs', text: say('signs-and-pauses') },
      { path: '/care/episode', text: say('episode') },
      { path: '/care/appointments', text: 'Appointments' },
      { path: '/access', text: say('phone-and-team') },
      { path: '/handover', text: 'Handover' },
    ],
  },
] as const;

export type Place = (typeof places)[number];
export type RecordPath = Place['pages'][number]['path'];

export const placeOf = (path: RecordPath): Place =>
  places.find(({ pages }) => pages.some((page) => page.path === path))!;
