/** A document before it is handed over. */
import { sayIn } from '../../say.ts';

export const words = {
  'letter-title': 'Letter at the end of care',
  'handout-title': 'Self-management handout',
  'handout-in': 'The handout in {language}',
  'handout-in-unreviewed': 'The handout in {language} (not yet reviewed)',
  'back-to-the-episode-of-care': 'Back to the episode of care',
  'this-document-can-be-made': 'This document can be made once an episode of care has been closed.',
  'read-and-fits': 'I have read this advice, and it fits this patient',
  'advice-in-the-clinics-name': 'Advice in the clinic’s name that does not come from the record',
  'before-you-hand-it-over': 'Before you hand it over',
  'read-all-of-it-before-you': 'Read all of it before you sign. Nothing is sent from this page.',
  'tick-first': 'Tick the box above first.',
  'plan-title': 'The plan for the patient, to print',
  'plan-hint':
    'Signed and in force today, with its cautions: a page a week, to follow and to fill in. What comes back is typed in under Data entry.',
  paper: 'Paper size',
  a4: 'A4',
  letter: 'US Letter',
  language: 'Language',
  weeks: 'Weeks',
  'weeks-count': { by: 'count', one: '{count} week', other: '{count} weeks' },
  'large-type': 'Large type',
  'papers-today': 'Papers from the record as it stands today (PDF)',
  'not-agreed': 'The patient has not agreed that others who treat them are told.',
  'ask-first': 'Ask before you hand one on',
  'papers-hint': 'Read each before you sign it on paper; nothing is sent.',
  'paper-letter': 'Letter to a GP, surgeon or rheumatologist: write, sign, print',
  'paper-discharge': 'Discharge summary, or summary of care so far, in {language}',
  'paper-self-management': 'Self-management sheet in {language}',
  'paper-flare-note': 'Note about a flare, to the rheumatology team, in {language}',
  'paper-handover': 'Handover on paper in {language} (PDF)',
  'this-as-pdf': 'As a PDF',
  'as-pdf-in': 'As a PDF in {language}',
  'open-the-plan': 'Open the plan (PDF)',
} as const;

export const say = sayIn(words);
