/** Wherever the phone writes a number to ring, it is one touch away. */
import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it, vi } from 'vitest';
import { screeningItems } from '#core/screening/items.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { asked, limbChoices } from '#messages/screening.ts';
import { asTyped } from '#messages/text.ts';
import { translate } from '#messages/translate.ts';
import { RingText, telephone } from '#ui/language/ring-text.tsx';
import { SentPage } from '#ui/patient/changed/change-pages.tsx';
import type { ChangePage } from '#ui/patient/changed/use-change.ts';
import { dayState } from '#ui/patient/day-state.ts';
import { HandoutPage } from '#ui/patient/handout/handout-page.tsx';
import { HomeQuestionsScreen } from '#ui/patient/home-questions/home-questions-screen.tsx';
import { MessageForm } from '#ui/patient/messages/message-form.tsx';
import { emptyOutbox, type Saved } from '#ui/patient/outbox/outbox.ts';
import { SavedHere } from '#ui/patient/outbox/saved-here.tsx';
import { Consents } from '#ui/patient/pre-visit/consents.tsx';
import { notGiven } from '#ui/patient/pre-visit/visit-answers.ts';
import { VisitQuestion } from '#ui/patient/pre-visit/visit-question.tsx';
import { CareAdvice } from '#ui/patient/session/pages/end-pages.tsx';
import { SessionScreen } from '#ui/patient/session/session-screen.tsx';
import '#ui/patient/today/seldom-words.ts';
import { EndedSession } from '#ui/patient/today/ended-session.tsx';
import { TodayPage } from '#ui/patient/today/today-page.tsx';
import { viewOnDay } from '#ui/patient/view-on-day.ts';
import { begin, onlyCuff, onlyWeight } from './session-play.ts';
import { today } from './views.ts';

vi.mock('next/navigation', () => ({ useRouter: () => ({ refresh: () => undefined }) }));

const nothing = () => undefined;
const { clinic } = today();
const { phone, urgentNumber, emergencyNumber } = clinic;
const numbers = [phone, urgentNumber, emergencyNumber];

const todayOf = (
  more: Parameters<typeof today>[0],
  day = '2026-03-09',
  told: Partial<ReturnType<typeof dayState>> = {},
) => {
  const view = viewOnDay(today(more), day);
  return (
    <TodayPage
      view={view}
      runningSince={null}
      state={{ ...dayState(view, [], 0), ...told }}
      isReady
      onStart={nothing}
      onResume={nothing}
      onMorning={nothing}
      onPain={nothing}
      onChangeMorning={nothing}
      onTwoHours={nothing}
    />
  );
};

const session = (
  step: string,
  from: ReturnType<typeof today>,
  more: Partial<ReturnType<typeof begin>> = {},
) => (
  <SessionScreen
    draft={{ ...begin(from), step, ...more }}
    clinic={clinic}
    hasCuff
    asksPregnancy={false}
    clock={() => 1_000_000}
    send={nothing}
    arrival="kept"
    onHome={nothing}
  />
);

const lookup = {
  joint: 'right-knee',
  byPain: [],
  whenUnknown: 'as-planned',
  acceptablePainLimit: 5,
} as const;
const hurt = { 'during:right-knee': 7 };
const rested = begin(onlyWeight).items.map((item) => ({ ...item, leftOut: 'offer' as const }));
const waits = begin(onlyCuff).items.map((item) => ({ ...item, restrictions: [{ from: 0, to: 900_000 }] }));
const limbs = waits.map((item) => ({ ...item, signs: { colour: 'not-usual' as const } }));
const aside = { entryId: 'a', kind: 'session', status: 'aside', savedAt: 0 } as Saved;
const hours = {
  monitoringHours: asTyped('weekdays'),
  phone,
  emergencyNumber,
  urgentNumber,
  clinicName: clinic.name,
};
const toldChange = {
  change: { told: { noteId: 'n' } },
  clinic,
  arrivalOf: () => 'kept',
} as unknown as ChangePage;
const message = `Ring us on ${phone}, or on ${urgentNumber}.`;

const care = (flag: 'chest-pain' | 'dark-urine' | 'locked-joint') => (
  <CareAdvice flags={[flag]} clinic={clinic} isCuffOn={false} arrival="kept" onHome={nothing} />
);
const visit = (id: 'new-chest-faint-or-breath' | 'swollen-calf') => (
  <VisitQuestion
    question={asked(screeningItems.find((item) => item.id === id)!)}
    limbs={limbChoices}
    given={{ ...notGiven, answer: 'yes' }}
    clinic={clinic}
    number={1}
    all={1}
    onGive={nothing}
    onNext={nothing}
    onBack={nothing}
  />
);

const yesNoDue = {
  homeQuestionsId: 'nights',
  title: 'Nights',
  version: 1,
  questions: [{ kind: 'yes-no', text: 'Did you sleep?', low: null, high: null }],
  knownEntryIds: [],
} as const;

const pages: readonly (readonly [string, () => ReactElement])[] = [
  ['today', () => todayOf({})],
  ['today in danger', () => todayOf({ danger: [asTyped(message)], contact: 'emergency' })],
  ['today, to ring the same day', () => todayOf({ contact: 'same-day' })],
  ['today, to ring', () => todayOf({ contact: 'routine' })],
  ['today with a sign told here', () => todayOf({}, '2026-03-09', { hasReportedFlag: true })],
  ['today with a flare told here', () => todayOf({}, '2026-03-09', { leftUntilCounted: 'none' })],
  ['today with a joint to rest', () => todayOf({}, '2026-03-09', { leftUntilCounted: 'rest-this-joint' })],
  [
    'a session of another day, with a limb that was not as usual',
    () => (
      <EndedSession
        draft={{ ...begin(onlyCuff), items: limbs }}
        by="another-day"
        clinic={clinic}
        onSend={nothing}
        onThrowAway={nothing}
      />
    ),
  ],
  ['today from a page that is too old', () => todayOf({}, '2026-04-09')],
  [
    'today with a message',
    () => todayOf({ messages: [{ text: asTyped(message), sentName: 'N', sentAt: 0 }] }),
  ],
  [
    'an entry put aside',
    () => <SavedHere state={{ ...emptyOutbox, entries: [aside] }} isLasting phone={phone} onSend={nothing} />,
  ],
  ['the short question about signs', () => session('flags-before', onlyWeight, { signForm: 'short' })],
  ['an easier session for pain', () => session('offer', onlyWeight, { items: rested })],
  ['news', () => session('offer', onlyWeight, { news: ['fall'] })],
  ['the wait after a cuff', () => session('limb-later:0', onlyCuff, { items: waits })],
  [
    'the end with a joint that hurt',
    () => session('done', onlyWeight, { endedAt: 1, scores: hurt, painLookups: [lookup] }),
  ],
  ['care at once', () => care('chest-pain')],
  ['care the same day', () => care('dark-urine')],
  ['care by the clinic', () => care('locked-joint')],
  ['a change that was told', () => <SentPage {...toldChange} />],
  [
    'questions asked at home',
    () => (
      <HomeQuestionsScreen
        ownerId="p"
        due={yesNoDue}
        clinic={clinic}
        enteredAs={null}
        step=""
        clock={() => 0}
        arrivalOf={() => 'kept'}
        onStep={nothing}
        onSave={async () => true}
        onHome={nothing}
      />
    ),
  ],
  ['the plan', () => <HandoutPage nutrition={null} view={today()} />],
  [
    'messages',
    () => (
      <MessageForm
        mine={{
          ...hours,
          clockOffset: 0,
          lines: [{ id: 'a', from: 'clinic', text: message, at: 0, byName: 'N' }],
        }}
        ownerId="p"
        clinicKey=""
      />
    ),
  ],
  ['consents', () => <Consents mine={{ ...hours, isMonitored: true, kinds: [] } as never} />],
  ['a question before a visit, for now', () => visit('new-chest-faint-or-breath')],
  ['a question before a visit, for today', () => visit('swollen-calf')],
];

const entities = (text: string) => text.replaceAll('&#x27;', "'").replaceAll('&amp;', '&');
const plain = (html: string) => entities(html.replace(/<[^>]*>/g, ''));
const rendered = pages.map(([name, page]) => [name, renderToStaticMarkup(page())] as const);

describe('a number to ring', () => {
  it.each(rendered)('on the page “%s” is a link', (_name, html) => {
    const rest = plain(html.replace(/<a [^>]*href="tel:\d+"[^>]*>.*?<\/a>/g, ''));
    expect(numbers.filter((number) => rest.includes(number))).toEqual([]);
    expect(html).toContain('href="tel:');
  });

  it('stands in no sentence that was not looked at here', () => {
    const { pages: sentences, forms } = everyLanguage.en;
    const values = {
      clinic: clinic.name,
      phone,
      urgent: urgentNumber,
      emergency: emergencyNumber,
      number: emergencyNumber,
    };
    const named = Object.entries(sentences).filter(
      ([key, sentence]) =>
        typeof sentence === 'string' &&
        (/\{(phone|urgent|emergency)\}/.test(sentence) || ['consent.call', 'visit.now'].includes(key)),
    );
    expect(named.length).toBeGreaterThan(15);
    const shown = rendered.map(([, html]) => plain(html)).join('\n');
    const unseen = named.filter(([, sentence]) => {
      const parts = translate(sentence, values, { forms } as never).split(/\{[a-z]+\}/);
      return !parts.every((part) => shown.includes(part));
    });
    expect(unseen.map(([key]) => key)).toEqual([]);
  });
});

describe('a number in a sentence', () => {
  const html = (text: string, numbersKnown = clinic) =>
    renderToStaticMarkup(<RingText text={text} clinic={numbersKnown} />);

  it.each([
    ['Ring 01\u00a0234.', 'Ring <a href="tel:01234">01\u00a0234</a>.'],
    ['112 or 01 234', '<a href="tel:112">112</a> or <a href="tel:01234">01 234</a>'],
    ['4112 and 1123 are others', '4112 and 1123 are others'],
    ['No number here', 'No number here'],
  ])('%s', (text, expected) => expect(html(text)).toBe(expected));

  it('with a plus and marks is rung by its digits', () => {
    expect(telephone('+353 (1) 234-56')).toBe('tel:+353123456');
    expect(html('Ring +353 (1) 234-56.', { ...clinic, phone: '+353 (1) 234-56' })).toBe(
      'Ring <a href="tel:+353123456">+353 (1) 234-56</a>.',
    );
  });

  it('stays as it is where no number is known', () => {
    expect(renderToStaticMarkup(<RingText text="Ring 112" clinic={{ phone: '' }} />)).toBe('Ring 112');
  });
});
