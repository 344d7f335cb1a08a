import { afterEach, describe, expect, it } from 'vitest';
import type { Access } from '#data/access.ts';
import { flushReads } from '#data/audit/audit.ts';
import { readingOnce, workedOnce } from '#data/database/read-together.ts';
import type { Store } from '#data/database/store.ts';
import { onWholeRecord } from '#data/decision/decide-queries.ts';
import { proposalsOf } from '#data/decision/decisions.ts';
import { takeMorning } from '#data/entries/take-entry.ts';
import { addEvent, eventsOf } from '#data/episode/care-events.ts';
import { consentsOf, recordConsent } from '#data/episode/consents.ts';
import { addLimit, limitsOf } from '#data/episode/limits-and-pre-approvals.ts';
import { baselinesOf } from '#data/patients/baselines.ts';
import { patientOf } from '#data/patients/people.ts';
import { prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { screeningsOf } from '#data/screening/screenings.ts';
import { busyClinic, morningAt } from '#tests/speed/busy-clinic.ts';
import { statementsDuring } from '#tests/speed/statements.ts';
import { accessOf } from '#tests/support/clinic.ts';

let store: Store;
afterEach(() => store.close());

const hour = 3_600_000;
/** Over the fifteen digits that JSON of the file would keep, and with a quote and a line of its own in the text. */
const limitKg = 7.300000000000001;
const remark = 'Said: "not more".\nΑύριο πάλι.';

const clinicOnRecord = async () => {
  const clinic = await busyClinic(6);
  store = clinic.store;
  const access = accessOf(store, 'a', 'clinician-a', clinic.now + hour);
  const { patientId } = clinic;
  for (const fromDay of [3, 1, 2].map((day) => `2026-03-0${day}`))
    await addLimit(access, patientId, {
      joint: 'right-knee',
      kind: 'load-limit',
      limitKg,
      movement: null,
      fromDegrees: null,
      toDegrees: null,
      from: fromDay,
      to: null,
      author: 'surgeon',
      remark,
    });
  const at = clinic.now + 20 * hour;
  await takeMorning(accessOf(store, 'a', patientId, at), patientId, morningAt(at, 'flare', { pain: 6 }));
  await flushReads(store);
  return { access: { ...access, now: at }, patientId };
};

const fall = { kind: 'fall', day: '2026-03-10', joint: null, remark: null } as const;

const readings: readonly [string, (access: Access, patientId: string) => Promise<unknown>][] = [
  ['person and profile', patientOf],
  ['prescriptions', prescriptionsOf],
  ['limits', limitsOf],
  ['baselines', baselinesOf],
  ['screenings', screeningsOf],
  ['events', eventsOf],
  ['consents', consentsOf],
  ['proposals', proposalsOf],
];

describe('what is read together is what each question finds by itself', () => {
  it('in the same order, real numbers to the last digit, texts letter by letter, nothing as nothing', async () => {
    const { access, patientId } = await clinicOnRecord();
    for (const [name, read] of readings) {
      const alone = await read(access, patientId);
      const together = await onWholeRecord(access, patientId, () => read(access, patientId));
      expect([name, together]).toEqual([name, alone]);
    }
    const limits = await onWholeRecord(access, patientId, () => limitsOf(access, patientId));
    expect(limits.map((one) => [one.from, one.limitKg, one.remark])).toEqual(
      [1, 2, 3].map((day) => [`2026-03-0${day}`, limitKg, remark]),
    );
  });

  it('and is not asked for again while the work goes on', async () => {
    const { access, patientId } = await clinicOnRecord();
    const asked = await onWholeRecord(access, patientId, () =>
      statementsDuring(store, async () => {
        for (const [, read] of readings) await read(access, patientId);
      }),
    );
    expect(asked).toEqual([]);
  });
});

describe('questions of one page', () => {
  it('read once what each of them looks at, and read on with what is written in between', async () => {
    const { access, patientId } = await clinicOnRecord();
    const page = readingOnce(store.read);
    const asked = (): Promise<readonly string[]> =>
      statementsDuring(store, () => page(() => eventsOf(access, patientId)));
    expect(await asked()).not.toEqual([]);
    expect(await asked()).toEqual([]);
    await page(() => addEvent(access, patientId, fall));
    expect(await page(() => eventsOf(access, patientId))).toHaveLength(1);
  });
});

describe('what was worked out', () => {
  const counted = async (between: (access: Access, patientId: string) => Promise<unknown>) => {
    const { access, patientId } = await clinicOnRecord();
    let times = 0;
    const ask = () =>
      workedOnce(access, 'falls', patientId, async () => {
        times += 1;
        return (await eventsOf(access, patientId)).length;
      });
    const answers = await store.write(() =>
      onWholeRecord(access, patientId, async () => [
        await ask(),
        await between(access, patientId),
        await ask(),
      ]),
    );
    return { times, first: answers[0], last: answers[2] };
  };

  it('is worked out once while nothing it was worked out from is written', async () => {
    const limit = { joint: 'right-knee', kind: 'load-limit', limitKg, movement: null } as const;
    const rest = {
      fromDegrees: null,
      toDegrees: null,
      from: '2026-03-04',
      to: null,
      author: 'surgeon',
      remark,
    } as const;
    const other = (access: Access, patientId: string) => addLimit(access, patientId, { ...limit, ...rest });
    expect(await counted(other)).toEqual({ times: 1, first: 0, last: 0 });
  });

  it('is worked out anew once a row it was worked out from is written', async () => {
    expect(await counted((access, patientId) => addEvent(access, patientId, fall))).toEqual({
      times: 2,
      first: 0,
      last: 1,
    });
  });
});

describe('what was read is not gone on with once it has changed', () => {
  it('work that reads and then writes reads on with what it wrote', async () => {
    const { access, patientId } = await clinicOnRecord();
    const found = await onWholeRecord(access, patientId, async () => {
      const before = await eventsOf(access, patientId);
      await addEvent(access, patientId, fall);
      return [before.length, (await eventsOf(access, patientId)).length];
    });
    expect(found).toEqual([0, 1]);
  });

  it('inside a write each table that was written is asked anew, and no other', async () => {
    const { access, patientId } = await clinicOnRecord();
    const asked = await statementsDuring(store, () =>
      store.write(() =>
        onWholeRecord(access, patientId, async () => {
          await recordConsent(access, patientId, {
            kind: 'occlusion-supervised',
            act: 'given',
            wordingSource: 'proposed',
            wordingVersion: 2,
            recordedVia: 'clinician',
            reason: null,
          });
          expect(await consentsOf(access, patientId)).toHaveLength(1);
          await limitsOf(access, patientId);
        }),
      ),
    );
    const again = asked.filter((sql) => /^select/.test(sql) && /from "(consent|care_limit)"/.test(sql));
    expect(again).toHaveLength(1);
  });

  it('other work is not told what this one has read', async () => {
    const { access, patientId } = await clinicOnRecord();
    await onWholeRecord(access, patientId, async () => {
      await eventsOf(access, patientId);
    });
    await addEvent(access, patientId, fall);
    expect(await eventsOf(access, patientId)).toHaveLength(1);
  });
});
