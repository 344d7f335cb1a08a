/** Warning signs told from training soreness, in both languages; who is asked about a cuff; whom to ring when nobody answers. */
import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, it } from 'vitest';
import { signFamilies } from '#core/danger/signs-asked.ts';
import { type RedFlag, redFlagClasses, redFlags } from '#core/decision/facts/facts.ts';
import { MonitoringHours } from '#ui/design-system/monitoring-hours.tsx';
import { speak } from '#ui/language/speak.ts';
import { setLanguage } from '#ui/language/words.ts';
import { dayState } from '#ui/patient/day-state.ts';
import { HandoutPage } from '#ui/patient/handout/handout-page.tsx';
import { beginMorning } from '#ui/patient/morning/morning.ts';
import { MorningScreen } from '#ui/patient/morning/morning-screen.tsx';
import { flagOptions, hasCuffIn } from '#ui/patient/questions/flag-list.ts';
import { CareAdvice } from '#ui/patient/session/pages/end-pages.tsx';
import { SessionScreen } from '#ui/patient/session/session-screen.tsx';
import { TodayPage } from '#ui/patient/today/today-page.tsx';
import { viewOnDay } from '#ui/patient/view-on-day.ts';
import { begin } from './session-play.ts';
import { chairDose, cuffDose, exercise, today, weightDose } from './views.ts';

const nothing = () => undefined;
/** A number within a sentence is a link, and no word of its own. */
const textOf = (page: ReactElement): string =>
  renderToStaticMarkup(page)
    .replace(/<a href="tel:\d+">([^<]*)<\/a>/g, '$1')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');
afterEach(() => setLanguage());

const labelOf = (flag: RedFlag): string => flagOptions(true).find(({ value }) => value === flag)!.label;
const cuffSign = /Ten minutes after the cuff/;
const { clinic } = today();

describe('a warning sign', () => {
  it('of the calf is told from usual soreness, in English and German', async () => {
    expect(labelOf('calf-pain-swelling')).toBe(
      'One calf is newly swollen, hot or tender, and it is not your usual soreness',
    );
    await speak('de');
    expect(labelOf('calf-pain-swelling')).toMatch(
      /^Eine Wade ist seit Kurzem .* nicht Ihr üblicher Muskelkater$/,
    );
  });

  it('of a joint is told from the person’s own flares, or by feeling ill, in English and German', async () => {
    expect(labelOf('hot-swollen-joint')).toBe(
      'One joint is suddenly much hotter and more swollen than in your flares, or you feel ill with it',
    );
    await speak('de');
    expect(labelOf('hot-swollen-joint')).toMatch(/als in Ihren Schüben, oder Sie fühlen sich dabei krank$/);
  });

  it('of the face, speech or one side of the body is an emergency, and is offered in both languages', async () => {
    const id = 'face-speech-or-one-sided-weakness';
    expect(redFlagClasses.emergency).toContain(id);
    expect(labelOf(id)).toMatch(/face droops.*speech is slurred.*one side of your body/);
    expect(
      textOf(<CareAdvice flags={[id]} clinic={clinic} isCuffOn={false} arrival="stored" onHome={nothing} />),
    ).toContain('Stop. Call 112 now');
    await speak('de');
    expect(labelOf(id)).toMatch(/Gesicht hängt.*undeutlich.*Körperhälfte/);
  });
});

describe('the sign after a cuff', () => {
  const withCuff = [exercise('weight', weightDose), exercise('cuff', cuffDose, { today: 'rest-this-joint' })];
  const without = [exercise('weight', weightDose), exercise('chair', chairDose)];

  it('is offered where a cuff is prescribed, resting today or not, and every other sign always', () => {
    expect([hasCuffIn(withCuff), hasCuffIn(without), hasCuffIn([])]).toEqual([true, false, false]);
    expect(flagOptions(true).map(({ value }) => value)).toEqual(redFlags);
    expect(flagOptions(false).map(({ value }) => value)).toEqual(
      redFlags.filter((flag) => flag !== 'persistent-limb-change-after-release'),
    );
  });

  it('is decided from the day the phone holds, also on a later day without a network', () => {
    for (const [exercises, hasCuff] of [
      [withCuff, true],
      [without, false],
    ] as const) {
      const later = viewOnDay({ ...today({ exercises }), day: '2026-03-09' }, '2026-03-10');
      expect(hasCuffIn(later.exercises)).toBe(hasCuff);
    }
  });

  it.each([true, false])('is on every list of signs or on none: %s', (hasCuff) => {
    const draft = beginMorning({
      entryId: 'm',
      ownerId: 'p',
      day: '2026-03-09',
      zone: 'Europe/Dublin',
      asksStiffness: true,
      asksSwelling: true,
      joints: ['right-knee'],
      isLate: false,
      asksUrine: false,
      enteredAs: null,
    });
    const shared = {
      clinic,
      hasCuff,
      painLookups: [],
      clock: () => 0,
      send: nothing,
      arrival: 'kept' as const,
      onHome: nothing,
    };
    const exercises = hasCuff ? withCuff : without;
    const lists = [
      ...(['list', 'short'] as const).map((signForm) => (
        <MorningScreen
          key={signForm}
          draft={{ ...draft, signForm, step: 'flags' }}
          onAmend={nothing}
          {...shared}
        />
      )),
      ...['flags-before', 'flags-during', 'flags-now'].map((step) => (
        <SessionScreen
          key={step}
          draft={{ ...begin(today({ exercises })), step }}
          asksPregnancy={false}
          {...shared}
        />
      )),
      <HandoutPage nutrition={null} key="handout" view={today({ exercises })} />,
    ];
    for (const list of lists) expect([list.key, cuffSign.test(textOf(list))]).toEqual([list.key, hasCuff]);
  });
});

describe('the short question', () => {
  const draft = { ...begin(today({ shortSignsUntil: '2026-03-09' })), step: 'flags-before' };
  const page = (hasCuff: boolean) =>
    textOf(
      <SessionScreen
        draft={draft}
        clinic={clinic}
        hasCuff={hasCuff}
        asksPregnancy={false}
        clock={() => 0}
        send={nothing}
        arrival="kept"
        onHome={nothing}
      />,
    );

  it('names the family of every sign of the whole list, each sign in one family', () => {
    expect(Object.values(signFamilies).flat().toSorted()).toEqual([...redFlags].toSorted());
  });

  /** A word of each sign’s own sentence that its family has to keep. */
  const kept: Readonly<Record<RedFlag, RegExp>> = {
    'chest-pain': /chest pain/i,
    breathlessness: /out of breath than usual/i,
    fainting: /fainting/i,
    'face-speech-or-one-sided-weakness': /drooping face, slurred speech, one side weak or numb/i,
    'severe-headache-or-vision': /bad headache or change in sight/i,
    'saddle-or-bladder-change': /numb between the legs; bladder or bowel/i,
    'hot-swollen-joint': /joint suddenly hot and swollen/i,
    'calf-pain-swelling': /swollen, hot or tender calf/i,
    'dark-urine': /dark brown urine or very bad muscle pain/i,
    'unexplained-fever': /fever or chills/i,
    'cannot-bear-weight-or-deformity': /misshapen, or unable to carry you/i,
    'persistent-limb-change-after-release': /after the cuff still numb, pale, bluish or swollen/i,
    'neck-pain-with-limb-symptoms': /numb or clumsy limbs, also with neck pain/i,
    'new-weakness': /new weak/i,
    'fall-with-injury': /fall that hurt you/i,
    'locked-joint': /stuck/i,
  };

  it.each(Object.entries(kept))('says %s', (_flag, words) => {
    expect(page(true)).toMatch(words);
  });

  it('has the whole list and the emergency number one press away', () => {
    expect(page(false)).toContain('The full list');
    expect(page(false)).toContain('Call 112');
    expect(page(false)).not.toMatch(cuffSign);
  });
});

describe('what may be new before a session', () => {
  it.each([true, false])('names pregnancy only where it is asked: %s', (asksPregnancy) => {
    const text = textOf(
      <SessionScreen
        draft={{ ...begin(today()), step: 'news' }}
        clinic={clinic}
        hasCuff
        asksPregnancy={asksPregnancy}
        clock={() => 0}
        send={nothing}
        arrival="kept"
        onHome={nothing}
      />,
    );
    expect(text).toContain('A new medicine');
    expect(text.includes('pregnant')).toBe(asksPregnancy);
  });
});

describe('whom to ring when nobody answers', () => {
  const sentences = {
    en: 'Ring Test clinic. If nobody answers, do not wait: ring 020 913 0166.',
    de: 'Rufen Sie Test clinic an. Meldet sich dort niemand, warten Sie nicht: Rufen Sie 020 913 0166 an.',
  } as const;
  const sameDay: RedFlag[] = ['dark-urine'];
  const todayOf = (more: Parameters<typeof today>[0]) => {
    const view = { ...viewOnDay(today(more), '2026-03-09') };
    return (
      <TodayPage
        view={view}
        runningSince={null}
        state={dayState(view, [], 0)}
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
  const places: readonly (readonly [string, () => ReactElement])[] = [
    ['the hours of the clinic', () => <MonitoringHours clinic={clinic} />],
    ['today', () => todayOf({})],
    ['today, to be rung the same day', () => todayOf({ contact: 'same-day' })],
    ['the handout', () => <HandoutPage nutrition={null} view={today()} />],
    [
      'advice after a sign of the same day',
      () => <CareAdvice flags={sameDay} clinic={clinic} isCuffOn={false} arrival="stored" onHome={nothing} />,
    ],
    [
      'advice after a sign for the clinic',
      () => (
        <CareAdvice
          flags={['locked-joint']}
          clinic={clinic}
          isCuffOn={false}
          arrival="stored"
          onHome={nothing}
        />
      ),
    ],
  ];

  it.each(places)('%s says it at any hour, in English and German', async (_name, page) => {
    expect(textOf(page())).toContain(sentences.en);
    await speak('de');
    expect(textOf(page())).toContain(sentences.de);
  });

  it('can be rung by one touch, after the clinic and before the emergency number', () => {
    const html = renderToStaticMarkup(
      <CareAdvice flags={sameDay} clinic={clinic} isCuffOn={false} arrival="stored" onHome={nothing} />,
    );
    const places = ['01234', '0209130166', '112'].map((number) =>
      html.indexOf(`<a href="tel:${number}" class="button`),
    );
    expect(places.every((place) => place >= 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it('has no second button for the emergency number while the clinic has entered none', () => {
    const html = renderToStaticMarkup(
      <CareAdvice
        flags={sameDay}
        clinic={{ ...clinic, urgentNumber: clinic.emergencyNumber }}
        isCuffOn={false}
        arrival="stored"
        onHome={nothing}
      />,
    );
    expect(html.match(/<a href="tel:112" class="button/g)).toHaveLength(1);
    expect(html).toContain('If nobody answers, do not wait: ring <a href="tel:112">112</a>.');
  });
});
