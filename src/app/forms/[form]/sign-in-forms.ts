/** The forms that open a sign-in, through its own door. Of a passphrase, PIN or one-time code nothing is shown again. */
import type { DoorAnswer, PostedForm, PostedOutcome, PostedProblem } from '#api/inputs/posted-form.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { pageWord } from '#messages/page-words.ts';
import { type Text, textBy } from '#messages/text.ts';
import {
  type CodeKind,
  codeDoors,
  codeProblem as oneTimeProblem,
  problemAfter,
  problemsOf,
} from '#ui/account/sign-in/sign-in.ts';
import type { Said } from '#ui/language/said.ts';
import type { t } from '#ui/language/words.ts';
import { codeProblem, newPinProblem, pinProblem } from '#ui/patient/account/typed-problems.ts';

const sayIn =
  (tag: LanguageTag): typeof t =>
  (key, ...values) =>
    pageWord(tag, key, ...values);

/** In every language: the page says it in the one it is read in. */
const inEvery = ({ field, text }: Said): PostedProblem => ({
  field,
  text: textBy((tag) => text(sayIn(tag))),
});

/** To the first page of whoever has just signed in; the phone drops what it kept of whoever was before. */
const signedIn: PostedOutcome = { page: '/?signed-in' };

const refusedBy = ({ status, json, waitSeconds }: DoorAnswer, field: 'passphrase' | CodeKind) => {
  const said = status >= 200 && status < 300 && json ? null : problemAfter({ status, waitSeconds }, field);
  return said ? { problems: [inEvery(said)] } : null;
};

const saidByDoor = ({ json }: DoorAnswer, field: string): PostedOutcome => ({
  problems: [{ field, text: (json.text as Text | undefined) ?? String(json.message) }],
});

const isTaken = ({ status }: DoorAnswer): boolean => status >= 200 && status < 300;

const nothingKept = () => ({});

/** Of somebody nobody knows no more is kept than an address for email may have. */
const longestLine = 254;

const signIn: PostedForm = {
  isOfStrangers: true,
  about: [],
  page: () => '/sign-in?with=passphrase',
  typedIn: (sent) => ({ email: (sent.get('email') ?? '').trim().slice(0, longestLine) }),
  send: async ({ door }, { typed, sent }) => {
    const email = typed.email ?? '';
    const passphrase = sent.get('passphrase') ?? '';
    const wrong = problemsOf(email, passphrase);
    if (wrong.length > 0) return { problems: wrong.map(inEvery) };
    const answer = await door('/sign-in/email', { email, password: passphrase });
    const refused = refusedBy(answer, 'passphrase');
    if (refused) return refused;
    return answer.json.twoFactorRedirect === true ? { step: 'code' } : signedIn;
  },
};

const signInCode: PostedForm = {
  isOfStrangers: true,
  about: [],
  page: () => '/sign-in?with=passphrase',
  typedIn: nothingKept,
  send: async ({ door }, { sent }) => {
    const other = sent.get('other');
    if (other) return { step: other === 'recovery' ? 'recovery' : 'code' };
    const kind: CodeKind = sent.has('recovery') ? 'recovery' : 'code';
    const code = (sent.get(kind) ?? '').replace(/\s/g, '');
    const wrong = oneTimeProblem(kind, code);
    if (wrong) return { problems: [inEvery(wrong)], step: kind };
    const refused = refusedBy(await door(codeDoors[kind], { code }), kind);
    return refused ? { ...refused, step: kind } : signedIn;
  },
};

const pin: PostedForm = {
  isOfStrangers: true,
  about: [],
  page: () => '/pin',
  typedIn: nothingKept,
  send: async ({ door }, { sent }) => {
    const typed = sent.get('pin') ?? '';
    const wrong = pinProblem(typed);
    if (wrong) return { problems: [inEvery(wrong)] };
    const answer = await door('/phone/sign-in', { pin: typed });
    return isTaken(answer) ? signedIn : saidByDoor(answer, 'pin');
  },
};

const enrolCode: PostedForm = {
  isOfStrangers: true,
  about: [],
  page: () => '/enrol',
  typedIn: (sent) => ({ code: (sent.get('code') ?? '').slice(0, longestLine) }),
  send: async ({ door }, { typed }) => {
    const code = typed.code ?? '';
    const wrong = codeProblem(code);
    if (wrong) return { problems: [inEvery(wrong)] };
    const answer = await door('/phone/accept', { code });
    return isTaken(answer) ? { page: '/enrol' } : saidByDoor(answer, 'code');
  },
};

const enrolPin: PostedForm = {
  isOfStrangers: true,
  about: [],
  page: () => '/enrol',
  typedIn: nothingKept,
  send: async ({ door }, { sent }) => {
    const typed = sent.get('pin') ?? '';
    const wrong = newPinProblem(typed, sent.get('again') ?? '');
    if (wrong) return { problems: [inEvery(wrong)] };
    const answer = await door('/phone/choose-pin', { pin: typed });
    return isTaken(answer) ? signedIn : saidByDoor(answer, 'pin');
  },
};

export const signInForms = {
  'sign-in': signIn,
  'sign-in-code': signInCode,
  pin,
  'enrol-code': enrolCode,
  'enrol-pin': enrolPin,
} as const satisfies Readonly<Record<string, PostedForm>>;
