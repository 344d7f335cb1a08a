/** Phases after surgery through the procedures: plan, phone and worklist follow what a clinician confirms. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { addDays } from '#core/time/day.ts';
import { type CareSetting, careSetting, firstDay, kneeRequest, worklistItemsOf } from './setting.ts';

let at: CareSetting;
let protocolId: string;

const dayOf = (day: number) => addDays(firstDay, day);
const staffOn = (day: number) => at.clinician(day).clinician;
const of = () => ({ patientId: at.patientId });

const phase = (over: object = {}) => ({
  place: 1,
  name: 'Protected',
  from: firstDay,
  weightBearing: 'none',
  bearKg: null,
  movement: null,
  fromDegrees: null,
  toDegrees: null,
  limitKg: 3,
  lowLoad: true,
  variation: true,
  occlusion: false,
  ...over,
});
const write = (day: number, over: object = {}, allowed: object = {}) =>
  staffOn(day).protocols.writePhase({ ...of(), protocolId, phase: phase(over), ...allowed });
const allowed = { step: { seen: 'Dr Surgeon rang.' } };
const confirm = (day: number, place: number) =>
  staffOn(day).protocols.confirm({ ...of(), protocolId, step: { place, seen: 'Wound closed.' } });
const proposedKg = async (day: number) =>
  (await staffOn(day).prescriptions.propose({ ...of(), request: kneeRequest })).dose;

beforeEach(async () => {
  at = await careSetting();
  protocolId = await staffOn(0).protocols.begin({
    ...of(),
    protocol: {
      joint: 'right-knee',
      procedure: 'Knee replacement',
      on: firstDay,
      author: 'Dr Surgeon',
      letter: 'Protect for two weeks.',
    },
  });
});
afterEach(() => at.store.close());

describe('a protocol', () => {
  it('binds with its first phase at once, by proposal and on the phone, and says who set it', async () => {
    expect(await proposedKg(0)).toMatchObject({ loadKg: 5 });
    await write(0);
    expect(await proposedKg(0)).toMatchObject({ loadKg: 3 });
    const { exercises } = await at.patient(0).patient.today.get();
    const told = exercises.flatMap(({ cautions }) => cautions.map(({ text }) => text.en)).join(' ');
    expect(told).toContain('Put no weight through your right knee, as Dr Surgeon told you.');
  });

  it('without a phase bounds nothing, and asks for one until it is written or the protocol ended', async () => {
    const due = async (day: number) =>
      (await worklistItemsOf(at, day))
        .filter(({ kind }) => kind === 'phase-due')
        .map(({ sentence }) => sentence);
    expect(await due(1)).toEqual([
      expect.stringMatching(/no phase written; until one is, it bounds nothing/),
    ]);
    await write(1);
    expect(await due(1)).toEqual([]);
  });

  it('opens by a clinician’s word on or after the day, and until then asks for it', async () => {
    await write(0);
    await write(0, { place: 2, name: 'Building', from: dayOf(14), weightBearing: 'full', limitKg: null });
    const asked = async (day: number) =>
      (await worklistItemsOf(at, day)).filter(({ kind }) => kind === 'phase-due').length;
    expect([await asked(13), await asked(14), await asked(15)]).toEqual([0, 1, 1]);
    await expect(confirm(13, 2)).rejects.toThrow(/planned from/);
    expect(await proposedKg(15)).toMatchObject({ loadKg: 3 });
    await confirm(15, 2);
    expect(await proposedKg(15)).toMatchObject({ loadKg: 5 });
    expect(await asked(16)).toBe(0);
    const [kept] = await staffOn(15).protocols.list(of());
    expect(kept).toMatchObject({ inForce: 2, due: null, letter: 'Protect for two weeks.' });
  });

  it('goes back to a stricter phase at once, and is put right by writing a phase anew', async () => {
    await write(0);
    await write(0, { place: 2, name: 'Building', from: dayOf(1), weightBearing: 'full', limitKg: null });
    await confirm(1, 2);
    await confirm(2, 1);
    expect(await proposedKg(2)).toMatchObject({ loadKg: 3 });
    // It may be looser at once, so what was seen is asked for as at its confirmation, and without it nothing is kept.
    await expect(write(2, { limitKg: null })).rejects.toThrow(/seen/);
    expect(await proposedKg(2)).toMatchObject({ loadKg: 3 });
    await write(2, { limitKg: null }, allowed);
    expect(await proposedKg(2)).toMatchObject({ loadKg: 5 });
    const [kept] = await staffOn(2).protocols.list(of());
    expect(kept).toMatchObject({ inForce: 1, rewritten: 1 });
    expect(kept?.steps.map(({ place }) => place)).toEqual([1, 2, 1, 1]);
    expect(kept?.steps.at(-1)).toMatchObject({ seen: 'Dr Surgeon rang.' });
  });

  it('goes on through an entry of kind “none”, dated before, on, or ahead of its day: that ends no phase', async () => {
    const none = { joint: 'right-knee', kind: 'none', limitKg: null, to: null, author: 'Dr Other' };
    const degrees = { movement: null, fromDegrees: null, toDegrees: null, remark: null };
    await staffOn(0).care.addLimit({ ...of(), limit: { ...none, ...degrees, from: dayOf(5) } });
    await write(0);
    await staffOn(0).care.addLimit({ ...of(), limit: { ...none, ...degrees, from: dayOf(1) } });
    expect(await proposedKg(0)).toMatchObject({ loadKg: 3 });
    expect(await proposedKg(1)).toMatchObject({ loadKg: 3 });
    expect(await proposedKg(5)).toMatchObject({ loadKg: 3 });
  });

  it('holds in the order in which it was written, also where the clock was put back between', async () => {
    await write(0);
    await write(0, { place: 2, name: 'Building', from: dayOf(1), weightBearing: 'full', limitKg: null });
    await confirm(2, 2);
    await confirm(1, 1);
    expect(await proposedKg(2)).toMatchObject({ loadKg: 3 });
    await write(2, { limitKg: 4 }, allowed);
    await write(1, { limitKg: 2 }, allowed);
    expect(await proposedKg(2)).toMatchObject({ loadKg: 2 });
    const [kept] = await staffOn(2).protocols.list(of());
    expect(kept?.steps.map(({ place }) => place)).toEqual([1, 2, 1, 1, 1]);
  });

  it('whose first phase is written ahead binds from that day, before anybody confirmed it', async () => {
    await write(0, { from: dayOf(2) });
    expect(await proposedKg(1)).toMatchObject({ loadKg: 5 });
    expect(await proposedKg(2)).toMatchObject({ loadKg: 3 });
    expect((await staffOn(2).protocols.list(of()))[0]).toMatchObject({ inForce: 1, due: 1 });
    await confirm(3, 1);
    expect(await proposedKg(3)).toMatchObject({ loadKg: 3 });
  });

  it('is confirmed and written anew as it was read, and not as a colleague wrote it meanwhile', async () => {
    await write(0);
    const second = { place: 2, name: 'Building', from: firstDay, weightBearing: 'full' };
    await write(0, { ...second, limitKg: 4 });
    const [shown] = await staffOn(0).protocols.list(of());
    const seen = shown!.phases[1]!.recordedAt;
    await write(0, { ...second, limitKg: null });
    const step = { place: 2, seen: 'Wound closed.' };
    const { protocols } = staffOn(0);
    await expect(protocols.confirm({ ...of(), protocolId, seen, step })).rejects.toThrow(/written meanwhile/);
    const stale = { ...of(), protocolId, seen, phase: phase({ ...second, limitKg: 4 }) };
    await expect(protocols.writePhase(stale)).rejects.toThrow(/written meanwhile/);
    const third = { ...of(), protocolId, seen: null, phase: phase({ ...second, place: 3, limitKg: 5 }) };
    await protocols.writePhase(third);
    await expect(protocols.writePhase(third)).rejects.toThrow(/written meanwhile/);
    const now = (await protocols.list(of()))[0]!.phases[1]!.recordedAt;
    await protocols.confirm({ ...of(), protocolId, seen: now, step });
    expect((await protocols.list(of()))[0]).toMatchObject({ inForce: 2 });
  });

  it('ended with a reason binds nothing more and takes no further phase', async () => {
    await write(0);
    await staffOn(3).protocols.end({ ...of(), protocolId, end: { reason: 'Surgeon closed it.' } });
    expect(await proposedKg(3)).toMatchObject({ loadKg: 5 });
    await expect(write(3, { place: 2 })).rejects.toThrow(/has ended/);
  });

  it('takes no blanks for what was seen or why it ends, and asks for it by its field', async () => {
    await write(0);
    const field = async (call: Promise<unknown>) =>
      (await call.then(
        () => null,
        (error: unknown) => error as { readonly refusals: readonly { readonly field: string }[] },
      ))!.refusals.map((refusal) => refusal.field);
    const { protocols } = staffOn(0);
    expect(await field(protocols.end({ ...of(), protocolId, end: { reason: '  ' } }))).toEqual([
      'input.reason',
    ]);
    const step = { place: 1, seen: ' \n ' };
    expect(await field(protocols.confirm({ ...of(), protocolId, step }))).toEqual(['input.seen']);
  });

  it('of another patient is not found, and nothing is half written', async () => {
    await expect(
      staffOn(0).protocols.writePhase({ ...of(), protocolId: 'not-hers', phase: phase() }),
    ).rejects.toThrow(/no such protocol/);
    await expect(write(0, { weightBearing: 'partial' })).rejects.toThrow();
    expect((await staffOn(0).protocols.list(of()))[0]?.phases).toEqual([]);
  });
});
