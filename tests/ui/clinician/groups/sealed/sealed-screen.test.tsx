/** The sealed hour as it is shown: asked as on the hour's own page, with no way to a record and nothing read back. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { answerKey } from '#ui/clinician/groups/sealed/answers-kept.ts';
import { PinForm } from '#ui/clinician/groups/sealed/pin-form.tsx';
import {
  arrivedBefore,
  personOf,
  type SealedRoster,
  withoutWaiting,
} from '#ui/clinician/groups/sealed/roster.ts';
import { SealedHourScreen } from '#ui/clinician/groups/sealed/sealed-hour-screen.tsx';
import { SealedPeople } from '#ui/clinician/groups/sealed/sealed-people.tsx';
import { Done, TakeAlong } from '#ui/clinician/groups/sealed/take-along.tsx';
import { areToldApart, marked, ofOneName } from '#ui/clinician/groups/sealed/told-apart.ts';
import type { OpenHour } from '#ui/clinician/groups/sealed/use-sealed-people.ts';
import { WaitingNotice } from '#ui/clinician/groups/sealed/waiting-answers.tsx';
import { before, person, today } from '../person-of-hour.ts';

const now = Date.parse('2026-03-02T10:00:00Z');
const { told: _, decided: __, ...plan } = today;
const taken: SealedRoster['people'][number] = {
  patientId: 'p1',
  entryId: 'group-1',
  firstName: 'Odo',
  today: plan,
};
const roster: SealedRoster = {
  ...{ hourId: 'h1', name: 'Knees', place: 'Cellar', zone: 'Europe/Lisbon', goneAt: now + 3_600_000 },
  ...{ takenBy: 'ada', takerName: 'Ada Verrin', clinicKey: 'k', sealedAt: now, leftOut: 0, people: [taken] },
};
const key = answerKey({ ...roster, entryId: 'group-1' });
const plain = (html: string) => html.replaceAll('&#x27;', '’');
const nothing = () => undefined;
const page = (
  drafts: OpenHour['drafts'] = {},
  arrived: readonly string[] = [],
  aside: readonly string[] = [],
) => {
  const hour = {
    roster,
    drafts,
    arrived: [],
    aside: [],
    clockLacks: 0,
    instant: () => now,
    key: {} as CryptoKey,
  };
  const ways = { onFinished: nothing, onLock: nothing, onPutAway: nothing };
  return plain(
    renderToStaticMarkup(
      <SealedPeople
        hour={hour}
        goneAt={roster.goneAt}
        arrived={new Set(arrived)}
        aside={new Set(aside)}
        {...ways}
      />,
    ),
  );
};
const begun = (more: object) => page({ p1: { state: 'begun', typed: { ...before, ...more } } });

describe('the sealed hour that lies open', () => {
  it('asks warning signs first, by first name, with limits open and no way to a record', () => {
    const html = page();
    expect(html).toContain('Odo');
    expect(html).toContain('No more than 4 kg on the right knee.');
    expect(html.indexOf('press-row')).toBeLessThan(html.indexOf('figure-line'));
    expect(html).not.toMatch(/href="\/patients|Done: /);
  });

  it('offers a set by the same two presses', () => {
    expect(begun({})).toMatch(/Done: \d+ repetitions with 4/);
    expect(begun({ 'as:line1': 'planned', 'set:line1:1': '20' })).toContain(
      'How many more could they have done?',
    );
  });

  it('says from when the plan is, when it goes, and that reasons were left at the clinic', () => {
    const html = page();
    expect(html).toContain('Open until 2 Mar, 11:00.');
    expect(html).toContain('as it stood when the hour was sealed at 2 Mar, 10:00');
    expect(html).toContain('was not taken along');
  });

  it('offers to take back a person who was begun, and nobody else', () => {
    expect(begun({})).toContain('Pressed for Odo by mistake? Take it back');
    expect(page()).not.toContain('by mistake');
    expect(page({ p1: { state: 'finished', flags: [] } })).not.toContain('by mistake');
  });

  it('reads back nothing of what was finished, and never says that it is with the clinic before it is', () => {
    const finished = { p1: { state: 'finished', flags: [] } } as const;
    expect(page(finished)).toContain('Not sent yet');
    expect(page(finished)).not.toMatch(/Set 1|Seated|With the clinic/);
    expect(page(finished, [key])).toContain('With the clinic');
  });

  it('of a told sign keeps whom to ring in sight, and says that nobody else can see it until it arrived', () => {
    const told = { p1: { state: 'finished', flags: ['chest-pain'] } } as const;
    expect(page(told)).toMatch(/Ring 112 now/);
    expect(page(told)).toContain('nobody else can see it');
    expect(page(told, [key])).not.toContain('nobody else can see it');
  });

  it('never says that what was put aside at the clinic counts, also where it seems to have arrived', () => {
    const html = page({ p1: { state: 'finished', flags: [] } }, [key], [key]);
    expect(html).toContain('Put aside, does not count');
    expect(html).toContain('Nothing of this one counts');
    expect(html).not.toMatch(/With the clinic|Saved/);
    const told = page({ p1: { state: 'finished', flags: ['chest-pain'] } }, [key], [key]);
    expect(told).toContain('the plan is not paused by it');
    expect(told).not.toContain('the plan is paused');
  });

  it('stops who was stopped when it was sealed, and leads nowhere', () => {
    const stopped = { ...taken, today: { ...plan, stop: 'warning-sign' as const, exercises: [] } };
    const hour = {
      roster: { ...roster, people: [stopped] },
      drafts: {},
      arrived: [],
      aside: [],
      clockLacks: 0,
    };
    const html = renderToStaticMarkup(
      <SealedPeople
        hour={{ ...hour, instant: () => now, key: {} as CryptoKey }}
        {...{
          goneAt: now,
          arrived: new Set<string>(),
          aside: new Set<string>(),
          onFinished: nothing,
          onLock: nothing,
          onPutAway: nothing,
        }}
      />,
    );
    expect(html).toContain('A warning sign is open');
    expect(html).not.toContain('/patients');
  });
});

describe('what is made up of a person that was taken along', () => {
  it('is empty: no reason, no name of who signed, nothing that changed', () => {
    const made = personOf(taken);
    expect(made.today).toMatchObject({ told: [], decided: [] });
    expect(made.today.exercises[0]).toMatchObject({ reasons: [], signedName: '' });
  });
});

describe('what is with the clinic when the hour is opened again', () => {
  const finished = { p1: { state: 'finished', flags: [] } } as const;
  it('is what was finished and waits no more', () => {
    const mine = { ...roster, entryId: 'group-1' };
    expect(arrivedBefore(roster, finished, [])).toEqual([key]);
    expect(arrivedBefore(roster, finished, [mine])).toEqual([]);
    expect(arrivedBefore(roster, { p1: { state: 'begun', typed: {} } }, [])).toEqual([]);
    expect(arrivedBefore(roster, {}, [])).toEqual([]);
  });

  it('is not told by what another clinician, or an earlier sealing, has waiting of the same session', () => {
    const mine = { ...roster, entryId: 'group-1' };
    expect(arrivedBefore(roster, finished, [{ ...mine, takenBy: 'bo' }])).toEqual([key]);
    expect(arrivedBefore(roster, finished, [{ ...mine, sealedAt: now - 1 }])).toEqual([key]);
  });
});

describe('taking along while an answer waits on the tablet', () => {
  it('leaves that person out, and says whom', () => {
    const other = { ...taken, patientId: 'p2' };
    expect(withoutWaiting([taken, other], [{ patientId: 'p1' }])).toEqual({ people: [other], left: [taken] });
    const html = renderToStaticMarkup(
      <Done count={1} leftOut={0} begun={['Ana · red']} waits={['Odo']} isHeld />,
    );
    expect(html).toContain('Ana · red was left out: already begun on this page');
    expect(html).toContain('Odo was left out: answers from before wait on this tablet');
  });
});

describe('before it is open', () => {
  it('the page itself holds nobody’s data', () => {
    expect(renderToStaticMarkup(<SealedHourScreen />)).not.toMatch(/Odo|knee/i);
  });

  it('a wrong PIN says how many tries are left before it is destroyed', () => {
    const form = (triesLeft: number | null) =>
      renderToStaticMarkup(<PinForm triesLeft={triesLeft} onPin={async () => undefined} />);
    expect(form(1)).toContain('After 1 more wrong try the sealed hour is destroyed');
    expect(form(null)).not.toContain('wrong');
  });

  it('it is said what goes along and what does not', () => {
    const html = plain(
      renderToStaticMarkup(<TakeAlong hourId="h1" people={[person()]} clinicKey="k" instant={() => now} />),
    );
    expect(html).toContain('No surname, birth date, diagnosis or number to ring goes along');
    expect(html).toContain('has seen the time 15 minutes after the booked end');
  });
});

describe('two people of one first name', () => {
  const two = [
    { patientId: 'p1', firstName: 'Ana' },
    { patientId: 'p2', firstName: 'ana ' },
    { patientId: 'p3', firstName: 'Odo' },
  ];
  it('are told apart by a word each, not the same, or the hour is not sealed', () => {
    expect(ofOneName(two).map(({ patientId }) => patientId)).toEqual(['p1', 'p2']);
    expect(areToldApart(two, {})).toBe(false);
    expect(areToldApart(two, { p1: 'red', p2: ' ' })).toBe(false);
    expect(areToldApart(two, { p1: 'red', p2: 'Red' })).toBe(false);
    expect(areToldApart(two, { p1: 'red', p2: 'blue' })).toBe(true);
    expect(marked(two, { p1: 'red', p2: 'blue' }, two).map((one) => one.mark)).toEqual([
      'red',
      'blue',
      undefined,
    ]);
  });

  it('are told apart also where one of them stays behind', () => {
    expect(marked(two.slice(0, 1), { p1: 'red', p2: 'blue' }, two)).toMatchObject([{ mark: 'red' }]);
  });

  it('need no word where every first name is there once', () => {
    expect(areToldApart(two.slice(1), {})).toBe(true);
  });
});

describe('what waits on the tablet', () => {
  const one = {
    ...{ hourId: 'h1', patientId: 'p1', entryId: 'e1', takenBy: 'ada' },
    ...{ takerName: 'Ada Verrin', sealedAt: now, clockLacks: 0 },
    encrypted: { version: 1, key: '', iv: '', data: '' },
  } as const;
  const none = new Set<string>();
  const notice = (over: object, toSignIn: readonly string[] = []) =>
    renderToStaticMarkup(
      <WaitingNotice
        waiting={[{ ...one, state: 'finished', isUrgent: false, ...over }]}
        {...{ toSignIn, aside: none, send: nothing }}
      />,
    );
  it('is counted and not shown; a warning sign among it is said first', () => {
    expect(notice({})).toContain('Answers of 1 person wait');
    expect(notice({})).not.toContain('warning sign');
    expect(notice({ isUrgent: true })).toContain('A warning sign is among them');
    expect(notice({ refused: 'no such hour' })).toContain('no such hour');
  });

  it('says by name who has to sign in, and how', () => {
    expect(notice({})).not.toContain('signed in');
    expect(notice({}, ['Ada Verrin'])).toContain('once Ada Verrin is signed in on this tablet');
    expect(notice({}, ['Ada Verrin'])).toContain('/sign-in');
  });

  const empty = (aside: ReadonlySet<string>) =>
    renderToStaticMarkup(<WaitingNotice {...{ waiting: [], aside, toSignIn: [], send: nothing }} />);
  it('is nothing where nothing waits', () => {
    expect(empty(none)).toBe('');
  });

  it('tells of what was put aside, also once nothing waits', () => {
    expect(empty(new Set([key]))).toContain('Answers of 1 session were put aside');
    expect(empty(new Set([key]))).toContain('a warning sign neither');
  });
});
