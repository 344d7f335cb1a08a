/** Every screen of a patient, shown in a language made by machine: what is still English was never translated. */
import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { morningQuestions } from '#core/record/morning-questions.ts';
import { screeningItems } from '#core/screening/items.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { languages } from '#messages/languages.ts';
import { asked, limbChoices } from '#messages/screening.ts';
import { begin, onlyCuff, onlyWeight } from '#tests/ui/patient/session-play.ts';
import { answeredMorning, today } from '#tests/ui/patient/views.ts';
import { FreshSignIn } from '#ui/account/fresh-sign-in.tsx';
import { SignInForm } from '#ui/account/sign-in/sign-in-form.tsx';
import { setLanguage, spokenLanguage, t } from '#ui/language/words.ts';
import { AccessLogList } from '#ui/patient/account/access-log-list.tsx';
import { CalendarAddress, MadeAddress } from '#ui/patient/account/calendar-address.tsx';
import { EnrolForm } from '#ui/patient/account/enrol-form.tsx';
import { EndQuestion } from '#ui/patient/account/lost-phone.tsx';
import { OwnPhones } from '#ui/patient/account/own-phones.tsx';
import { PinForm } from '#ui/patient/account/pin-form.tsx';
import { ChangedScreen } from '#ui/patient/changed/changed-screen.tsx';
import { CorrectScreen } from '#ui/patient/correcting/correct-screen.tsx';
import { HandoutPage } from '#ui/patient/handout/handout-page.tsx';
import { HistoryPage } from '#ui/patient/history/history-page.tsx';
import { beginMorning } from '#ui/patient/morning/morning.ts';
import { MorningScreen } from '#ui/patient/morning/morning-screen.tsx';
import { PatientApp } from '#ui/patient/patient-app.tsx';
import { notGiven } from '#ui/patient/pre-visit/visit-answers.ts';
import { VisitQuestion } from '#ui/patient/pre-visit/visit-question.tsx';
import { SessionScreen } from '#ui/patient/session/session-screen.tsx';
import { SeldomNeeded } from '#ui/patient/today/seldom-needed.tsx';
import { TwoHoursScreen } from '#ui/patient/two-hours/two-hours-screen.tsx';
import { pseudoOf } from './pseudo.ts';
import { worked } from './worked-session.ts';

vi.mock('next/navigation', () => ({ useRouter: () => ({ refresh: () => undefined }) }));

const { en } = everyLanguage;
const { pages, forms } = pseudoOf(en);
const nothing = () => undefined;
const phone = { id: 'p', enrolledAt: 0, lastUsedAt: 1, state: 'in-use', ended: null } as const;
const clock = () => 1_000_000;

beforeAll(() => setLanguage({ tag: 'en', locale: en.locale, forms, words: pages }));
afterAll(() => setLanguage());

const view = today({
  asksTwoHours: true,
  questionsWait: true,
  morning: { due: true, answered: false, yesterdayOpen: true, canBeLate: true },
});
const { clinic } = view;
const calendar =
  /\b(?:(?:Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day|January|February|March|April|May|June|July|August|September|October|November|December|Mar|Feb|Jan)\b/g;
/** English of what came from the server, which sends each text in every language. */
const sentIn = (value: unknown): readonly string[] =>
  typeof value === 'string' ? [value] : Object.values(value ?? {}).flatMap(sentIn);
const sent = [view.exercises, screeningItems.map(asked), limbChoices, clinic]
  .flatMap(sentIn)
  .filter((text) => /[A-Z ]/.test(text));
/** Typed by people, the names of units and of languages, and what the clock and the calendar write. */
const typed = [...sent, view.givenName, 'Nuala D', ...languages.map(({ name }) => name)].toSorted(
  (a, b) => b.length - a.length,
);

/** Every text a person sees or hears. */
const textsOf = (page: ReactElement): string => {
  const html = renderToStaticMarkup(page);
  const spoken = [...html.matchAll(/(?:aria-label|title|alt|placeholder)="([^"]*)"/g)].map(
    ([, text]) => text,
  );
  return [html.replace(/<[^>]*>/g, '\n'), ...spoken].join('\n').replace(/&[a-z0-9#]+;/g, '');
};

/** What is left of a page once all that was said in the language, or typed, is taken out. */
const leftIn = (page: ReactElement): readonly string[] => {
  let text = textsOf(page);
  while (/⟦[^⟦⟧]*⟧/.test(text)) text = text.replace(/⟦[^⟦⟧]*⟧/g, '');
  const rest = typed.reduce((all, one) => all.replaceAll(one, ''), text.replace(calendar, ''));
  return rest.split('\n').filter((line) => /\p{L}{2}/u.test(line));
};

const session = (step: string, from = onlyWeight): ReactElement => (
  <SessionScreen
    draft={{ ...begin(from), step }}
    clinic={clinic}
    hasCuff
    asksPregnancy
    clock={clock}
    send={nothing}
    arrival="kept"
    onHome={nothing}
  />
);

const morningDraft = beginMorning({
  entryId: 'm',
  ownerId: 'p',
  day: view.day,
  zone: 'Europe/Dublin',
  asksStiffness: true,
  asksSwelling: true,
  asksFatigue: true,
  asksOtherJoint: true,
  joints: ['left-knee', 'right-knee', 'left-hip'],
  isLate: true,
  asksUrine: true,
  enteredAs: null,
});

const morning = (step: string): ReactElement => (
  <MorningScreen
    draft={{ ...morningDraft, step }}
    clinic={clinic}
    hasCuff
    painLookups={[]}
    clock={clock}
    send={nothing}
    arrival="stored"
    onAmend={nothing}
    onHome={nothing}
  />
);

const ofSeldom = {
  ownerId: 'p',
  clock,
  arrivalOf: () => 'kept' as const,
  onStep: nothing,
  onSave: async () => true,
  onHome: nothing,
};
const changed = (step: string): ReactElement => (
  <ChangedScreen {...ofSeldom} {...{ clinic, step }} followedJoints={['left-knee']} hasCuff />
);
const correcting = (step: string): ReactElement => (
  <CorrectScreen {...ofSeldom} {...{ view, step }} sent={{ entry: worked, titles: {} }} enteredAs={null} />
);
const correctSteps = ['', 'set:0', 'during:left-knee', 'gave-way:left-knee', 'burn', 'cuff', 'extra'];

const weightSteps = [
  'flags-before',
  'flags-during',
  'flags-now',
  'before:right-knee',
  'usual',
  'other-joint',
  'relief',
  'news',
  'offer',
  'item:0',
  'set:0:1',
  'stop-count:0:1',
  'stop:0:1',
  'stop-pain:0:1:right-knee',
  'stop-next:0:1',
  'rest:0:1',
  'during:right-knee',
  'after:right-knee',
  'burn',
  'gave-way:right-knee',
  'gave-way:left-hand',
  'statement',
  'extra',
  'check',
];
const cuffSteps = ['item:0', 'cuff-on:0', 'set:0:1', 'rest:0:1', 'cuff-off:0', 'limb:0:1', 'cuff'];
const ofJoint = morningQuestions.map(({ id }) => id).filter((id) => id !== 'pain');
const morningSteps = [
  'urine',
  'pain',
  'usual',
  'flags',
  ...ofJoint,
  'relief',
  'check',
  'fatigue',
  'other-joint',
];

const screens: Readonly<Record<string, () => ReactElement>> = {
  today: () => <PatientApp view={view} ownerId="p" clinicKey="k" />,
  'today, answered': () => (
    <PatientApp
      view={today({ sessionSent: true, contact: 'same-day', oldPageDays: 1 })}
      ownerId="p"
      clinicKey="k"
    />
  ),
  'closed at first': () => <SeldomNeeded who={null} onChoose={nothing} />,
  ...Object.fromEntries(weightSteps.map((step) => [`session ${step}`, () => session(step)])),
  ...Object.fromEntries(cuffSteps.map((step) => [`cuff ${step}`, () => session(step, onlyCuff)])),
  ...Object.fromEntries(morningSteps.map((step) => [`morning ${step}`, () => morning(`${step}:left-knee`)])),
  ...Object.fromEntries(ofJoint.map((id) => [`morning, all ${id}`, () => morning(`all:${id}`)])),
  ...Object.fromEntries(
    ['', 'place', 'began', 'words'].map((step) => [`something has changed ${step}`, () => changed(step)]),
  ),
  ...Object.fromEntries(correctSteps.map((step) => [`correcting ${step}`, () => correcting(step)])),
  'two hours': () => (
    <TwoHoursScreen
      joints={['right-hip']}
      sessionEntryId="s"
      answered={0}
      day={view.day}
      zone="Europe/Dublin"
      enteredAs={null}
      clock={clock}
      onAnswer={nothing}
      onHome={nothing}
    />
  ),
  handout: () => <HandoutPage nutrition={null} view={view} />,
  history: () => (
    <HistoryPage
      view={{
        earlierThan: null,
        today: view.day,
        days: [
          {
            day: view.day,
            sessions: [
              {
                kind: 'bad-day',
                exercises: [],
                joints: [{ joint: 'left-knee', painBefore: 1, painDuring: 2, painAfter: null }],
              },
            ],
            mornings: [{ joints: [answeredMorning], fatigue: 4, otherJoint: 'worse' }],
            decisions: [],
          },
        ],
      }}
    />
  ),
  ...Object.fromEntries(
    screeningItems
      .slice(0, 12)
      .map((question, place) => [
        `question ${question.id}`,
        () => (
          <VisitQuestion
            question={asked(question)}
            limbs={limbChoices}
            given={{ ...notGiven, answer: 'yes' }}
            clinic={{ name: 'Ward', phone: '0711 55', emergencyNumber: '112', urgentNumber: '116 117' }}
            number={place + 1}
            all={screeningItems.length}
            onGive={nothing}
            onNext={nothing}
            onBack={nothing}
          />
        ),
      ]),
  ),
  enrol: () => <EnrolForm startsAtPin={false} />,
  'choose a PIN': () => <EnrolForm startsAtPin />,
  PIN: () => <PinForm isSpent={false} />,
  'sign in': () => <SignInForm hasPasskeys />,
  'PIN again': () => <FreshSignIn by="pin" onProved={nothing} onCancel={nothing} />,
  'own phones': () => <OwnPhones phones={[phone]} hereId={phone.id} zone="UTC" provenBy="pin" />,
  'lost phone': () => <EndQuestion onYes={nothing} onNo={nothing} />,
  'calendar address': () => (
    <CalendarAddress feed={{ madeAt: 0, lastReadAt: null, ended: null }} zone="UTC" provenBy="pin" />
  ),
  'calendar address, made': () => <MadeAddress origin="Nuala D" path="" />,
  'access log': () => (
    <AccessLogList
      day="2026-03-09"
      lines={[
        {
          day: '2026-03-08',
          name: 'Nuala D',
          isFeed: false,
          isProgram: true,
          reads: 2,
          writes: 1,
          reasons: [],
          handedTo: ['Nuala D'],
        },
      ]}
    />
  ),
};

describe('in a pseudo-language', () => {
  it.each(Object.keys(screens))('%s shows only what was said in it, or typed', (name) => {
    const page = screens[name]!();
    expect(leftIn(page)).toEqual([]);
    expect(textsOf(page)).toMatch(/⟦/);
  });

  it('a sentence that was never translated would be found', () => {
    expect(leftIn(<p>Hold on to the {t('frame.today')}</p>)).toEqual(['Hold on to the ']);
    expect(spokenLanguage().words).toBe(pages);
  });
});
