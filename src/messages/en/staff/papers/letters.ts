/** Letters as they are kept: the list, a draft, its signature, and a letter that was wrong. */
import { sayIn } from '../../../say.ts';

export const words = {
  title: 'Letters',
  new: 'New letter',
  'new-about':
    'Made from the record as it stands on the day it is signed. Nothing is sent from here: print it, or save it as a PDF.',
  'use-again': 'To somebody who had a letter before',
  none: 'No letter so far.',
  begin: 'Save as a draft',
  begun: 'Saved as a draft.',
  'draft-line': '{to}: draft, saved {at} by {name}',
  'signed-line': '{to}: signed {on} by {name}',
  'void-line': '{to}: VOID since {on}, by {name}: {reason}',
  'to-place': '{name}, {place}',
  'notes-chosen': {
    by: 'count',
    one: '{count} visit note is chosen for this letter.',
    other: '{count} visit notes are chosen for this letter.',
  },
  'choose-notes': 'Visit notes go into a letter by choice alone: choose them among the notes',
  'not-agreed':
    'The patient has not agreed that others who treat them are told. Ask before you sign this letter or hand it on.',
  'not-agreed-sign':
    'The patient has not agreed that others who treat them are told. Sign this letter all the same?',
  'sign-anyway': 'Sign it all the same',
  'sign-not': 'Do not sign it yet',
  'ask-first': 'Consents',
  back: 'All letters',
  'state-draft': 'Draft, not signed',
  'state-signed': 'Signed {on} by {name}',
  'state-void': 'Void since {on}, by {name}: {reason}',
  'as-pdf': 'This letter as a PDF',
  'as-pdf-us': 'On US Letter',
  'as-pdf-large': 'In large type',
  'to-whom': 'To whom',
  'save-to': 'Save',
  'saved-to': 'Saved.',
  sentences: 'The summary',
  'sentences-about':
    'Put a sentence into your own words, or leave it as the record makes it; an empty field takes the record’s again. What is asked, the cautions and open risks are always made from the record.',
  'own-by': 'In the words of {name}. The record’s sentence then: {instead}',
  'made-now': 'The record’s sentence now: {now}',
  'nothing-made': 'The record has no sentence here.',
  'own-outrun':
    'The record has changed since “{text}” was written. Its own sentence now says: {now} Sign the words as they stand?',
  'save-sentences': 'Save the summary',
  'saved-sentences': 'Summary saved.',
  'language-changed':
    'In another language your own sentences stay as you wrote them: put them into the new one yourself.',
  read: 'The letter as it will be signed',
  'as-signed': 'The letter as it stands',
  'record-behind': 'The record behind it, from page 2',
  sign: 'Sign',
  'sign-about': 'Read the whole letter above first. Once signed, nothing of it changes.',
  'sign-as': 'Sign as {name}',
  signed: 'Signed.',
  'notes-gone': {
    by: 'count',
    one: '{count} note chosen for this letter was marked as entered in error and is left out.',
    other: '{count} notes chosen for this letter were marked as entered in error and are left out.',
  },
  'make-void': 'Void this letter',
  'void-about': 'It stays on record and prints with VOID across every page. A right one is a new letter.',
  voided: 'The letter is void.',
  'not-a-draft': 'This letter is signed or void: nothing of it can be changed. Begin a new one.',
  'saved-since':
    'This letter was saved or signed since you opened it. Load the page again and look at it anew.',
  'record-changed':
    'The record has changed since you opened this letter. Load the page, read the letter again, then sign.',
  'void-already': 'This letter is void already.',
} as const;

export const say = sayIn(words);
