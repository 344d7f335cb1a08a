/** The page of a group hour: signs first, today's plan with what changes it, and what is not done. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { signFamilies } from '#core/danger/signs-asked.ts';
import { words as signWords } from '#messages/en/pages/warning-signs.ts';
import type { ClosedPerson, GroupHourAnswer, GroupPerson } from '#ui/clinician/answers.ts';
import { entryOf } from '#ui/clinician/groups/group-entry.ts';
import { HourScreen } from '#ui/clinician/groups/hour-screen.tsx';
import { after, before, exercise, none, person, today } from './person-of-hour.ts';

const clock = { zone: 'Europe/Lisbon', now: Date.parse('2026-03-02T10:10:00Z') };
const hour: GroupHourAnswer = {
  id: 'h1',
  entry: {
    hourId: 'h1',
    version: 1,
    name: 'Knees on Monday',
    place: 'Large room',
    when: '2026-03-02T10:00',
    minutes: 60,
    clinicianId: 'c1',
    clinicianName: 'Ada Verrin',
    writtenAt: 0,
    writtenBy: 'Ada Verrin',
  },
  earlier: [],
  changes: [],
  ended: null,
  members: [],
  left: [],
};
const page = (people: readonly (GroupPerson | ClosedPerson)[], over: Partial<GroupHourAnswer> = {}) =>
  renderToStaticMarkup(
    <HourScreen hour={{ ...hour, ...over }} people={people} clinicKey="k" clock={clock} />,
  ).replaceAll('&#x27;', '’');
/** Of the cards; taking the hour along stands above them. */
const buttons = (html: string) =>
  [...html.slice(html.indexOf('group-cards')).matchAll(/<button[^>]*>(.*?)<\/button>/g)].map(
    ([, text]) => text,
  );
const sets = { 'as:line1': 'planned', 'set:line1:1': '20', 'effort:line1:1': '2' };
const typed = (more: object) => person({ typed: { hour: 'h1', ...more } });

describe('the page of a group hour', () => {
  it('asks everybody’s warning signs first, in the words of the phone, one press where there is none', () => {
    const twelve = Array.from({ length: 12 }, (_, place) =>
      person({ patientId: `p${place}`, name: `P ${place}` }),
    );
    const html = page(twelve);
    for (const family of Object.keys(signFamilies).filter((one) => one !== 'cuff'))
      expect(html).toContain(signWords[`family.${family as 'heart'}`]);
    expect(buttons(html).filter((text) => text === 'No, none of these')).toHaveLength(12);
    expect(html).not.toContain('Done: ');
    expect(html).toContain('Not saved yet: 12 people');
  });

  it('asks by the whole list where the short question may not stand, and reports none by one press', () => {
    const html = page([person({ today: { ...today, isShortSigns: false } })]);
    expect(html).toContain(signWords['flag.chest-pain']);
    expect(html).not.toContain('Report');
  });

  it('shows each plan of today before a set is asked for: dose, limits open, other cautions folded', () => {
    const html = page([person()]);
    expect(html).toContain('3 × 15–20, 4 kg');
    expect(html).toContain('<p class="small limit-line">No more than 4 kg on the right knee.</p>');
    expect(html).toContain('1 caution');
    expect(html).toContain('Do the same again.');
  });

  it('shows the lower dose that the plan or the pain leaves, with why', () => {
    const eased = {
      ...exercise,
      today: 'bad-day' as const,
      reasons: [{ code: 'decision', joint: 'right-knee', decisionId: 'd', today: 'bad-day' }] as const,
    };
    const decided: GroupPerson['today']['decided'] = [{ joint: 'right-knee', decision: 'ease-back' }];
    const html = page([person({ today: { ...today, decided, exercises: [eased] } })]);
    expect(html).toContain('2 × 10–12, 4 kg');
    expect(html).toMatch(/easier session today<\/span> ease back for the right knee/);
    expect(page([typed({ ...before, 'before:right-knee': '6' })])).toContain('because of the pain told now');
  });

  it('offers a set as prescribed by its count and load, then the effort, and lets each be changed', () => {
    expect(page([typed(before)])).toContain('Done: 20 repetitions with 4 kg');
    const counted = page([typed({ ...before, 'as:line1': 'planned', 'set:line1:1': '20' })]);
    expect(buttons(counted)).toEqual(expect.arrayContaining(['0', '1', '2', '3', '4', '5+', 'Not said']));
    expect(page([typed({ ...before, ...sets })])).toContain('Set 1: 20 repetitions, 2 more possible');
  });

  it('asks for warning signs during the work before it saves', () => {
    const open = { ...before, ...sets, finished: 'yes' };
    expect(page([typed(open)])).toContain('Your right knee did not give way');
    expect(page([typed(open)])).toMatch(/<button[^>]*disabled=""[^>]*>Save the session/);
    expect(page([typed({ ...open, ...after })])).not.toMatch(/<button[^>]*disabled=""[^>]*>Save the session/);
  });

  it('names the sets and answers that are not done', () => {
    const html = page([typed({ ...before, ...sets, ...after, finished: 'yes' })]);
    expect(html).toMatch(/Not done or not said: 1 of 3 sets of [^;]*; muscle burn is not asked here\./);
  });

  it('says that pain two hours later is not asked, where the clinic asks for it after other sessions', () => {
    const all = { hour: 'h1', ...before, ...sets, ...after, finished: 'yes' };
    const asking = { ...today, asksTwoHours: true };
    expect(page([person({ typed: all, today: asking })])).toContain('pain two hours later is not asked');
    expect(page([person({ typed: all })])).not.toContain('two hours');
  });

  it('of a sign told and not on record says what to do and that nobody else can see it, and not that it was reported', () => {
    const html = page([typed({ ...none, signs: 'chest-pain' })]);
    expect(html).toContain('Ring 112 now');
    expect(html).toContain('Not reported yet');
    expect(html).not.toContain('It stands on the worklist');
    expect(html).toContain('Not saved yet: 1 person');
  });

  it('asks nothing of somebody who is stopped, and leads to the warning sign', () => {
    const html = page([person({ today: { ...today, stop: 'warning-sign' } })]);
    expect(buttons(html)).toEqual([]);
    expect(html).toContain('/patients/p1/warning-signs');
    expect(html).toContain('A session of everybody is saved, or was stopped.');
  });

  it('of a saved session says who supervised it, and no next dose the engine has not decided', () => {
    const entry = entryOf(person(), { ...before, ...sets, ...after }, { now: clock.now });
    const session = {
      sessionId: 's1',
      entry,
      arrivedAt: clock.now,
      by: 'Ada Verrin',
      correctedBy: [],
      exercises: [],
      next: [],
    };
    const html = page([person({ session })]);
    expect(html).toContain('Supervised by Ada Verrin.');
    const corrected = page([person({ session: { ...session, correctedBy: ['Bo Halse'] } })]);
    expect(corrected).toContain('Supervised by Ada Verrin. Corrected by Bo Halse, last saved at');
    expect(html).toContain('not decided yet');
    const made = {
      itemId: 'line1',
      decision: 'progress',
      effect: 'awaits-signature',
      changes: [],
      isWaiting: true,
    } as const;
    const next = [{ ...made, dose: { ...exercise.dose, loadKg: 4.5 } as typeof exercise.dose }];
    const decided = page([person({ session: { ...session, next } })]);
    expect(decided).toContain('4.5 kg. It waits for a signature.');
    expect(decided).toContain('/patients/p1/prescriptions');
  });

  it('shows nothing of a person kept to a care team, and asks nothing on another day or of a cancelled hour', () => {
    expect(page([{ patientId: 'p9', name: null }])).toContain('kept to a care team');
    expect(buttons(page([person()], { entry: { ...hour.entry, when: '2026-03-03T10:00' } }))).toEqual([]);
    expect(buttons(page([person()], { ended: 'cancelled' }))).toEqual([]);
  });

  it('never calls anything safe', () => {
    expect(page([person(), typed(before), typed({ ...before, ...sets, ...after })])).not.toMatch(/\bsafe/i);
  });
});
