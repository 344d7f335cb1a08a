/** A letter on its page: what is said before it is signed, whose words are shown as whose, and what is over. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it, vi } from 'vitest';
import { letterSpeech } from '#messages/papers/colleague-words.ts';
import { letterWords } from '#papers/letter/letter-data.ts';
import { unframed } from '#papers/letter/letter-frame.ts';
import { madeSummary } from '#papers/letter/letter-summary.ts';
import { letter } from '#tests/papers/letter-papers.ts';
import type { Letter } from '#ui/clinician/answers.ts';
import { LetterScreen } from '#ui/clinician/letters/letter-screen.tsx';

vi.mock('next/navigation', () => ({
  useRouter: () => ({ refresh: () => undefined, push: () => undefined }),
}));

const speech = letterSpeech('en');
const made = madeSummary(letter(), speech);

const kept = (over: Partial<Letter> = {}): Letter => ({
  letterId: 'l',
  state: 'draft',
  name: 'Dr Ada Verrin',
  organisation: null,
  language: 'en',
  savedAt: 0,
  savedBy: 'Nuala Derravane',
  signed: null,
  voided: null,
  words: letterWords(letter(), unframed('Dr Ada Verrin'), speech, '2026-04-20'),
  made,
  notesGone: 0,
  seen: 2,
  draft: {
    name: 'Dr Ada Verrin',
    role: null,
    organisation: null,
    address: null,
    copies: null,
    toPatient: false,
    language: 'en',
    noteIds: [],
    own: {},
    recordedAt: 0,
    byName: 'Nuala Derravane',
  },
  signedAs: null,
  digest: 'abc',
  signsAs: null,
  mayTellOthers: true,
  ...over,
});

const shown = (over: Partial<Letter> = {}): string =>
  renderToStaticMarkup(
    <LetterScreen patientId="p" letter={kept(over)} signer="Nuala Derravane" />,
  ).replaceAll('&#x27;', '’');

describe('the page of a letter', () => {
  it('says before the signature that the patient has not agreed, and only then', () => {
    const page = shown({ mayTellOthers: false });
    const said = page.indexOf('has not agreed that others who treat them are told');
    expect(said).toBeGreaterThan(-1);
    expect(said).toBeLessThan(page.indexOf('Sign as Nuala Derravane'));
    expect(shown()).not.toContain('has not agreed');
  });

  it('shows the whole letter before it may be signed, the record behind it as well', () => {
    const page = shown();
    for (const said of ['What we ask of you', 'DRAFT – not signed', 'The record behind it', 'Sign as'])
      expect(page).toContain(said);
    expect(page.indexOf('Cautions of the present doses')).toBeLessThan(page.indexOf('Sign as'));
  });

  it('says whose words a sentence is, and what the record said then and says now', () => {
    const own = { now: { text: 'Mine.', instead: 'Before.', by: 'Rowan Example' } };
    const page = shown({ draft: { ...kept().draft, own } });
    expect(page).toContain('In the words of Rowan Example. The record’s sentence then: Before.');
    expect(page).toContain(`The record’s sentence now: ${made.now}`);
  });

  it('offers nothing to change once it is signed, and says why it is void', () => {
    const signed = shown({ state: 'signed', signed: { on: '2026-04-20', by: 'Nuala Derravane' } });
    expect(signed).not.toContain('Save the summary');
    expect(signed).toContain('Void this letter');
    const voided = { on: '2026-04-21', by: 'Nuala Derravane', reason: 'Wrong knee.' };
    const over = shown({ state: 'void', voided });
    expect(over).toContain('Wrong knee.');
    expect(over).not.toContain('Sign as');
    expect(over).not.toContain('Void this letter');
  });
});
