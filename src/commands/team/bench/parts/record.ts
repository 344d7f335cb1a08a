/** A patient's record and the review picture's data against the same rows read raw. */
import { addDays } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { responsesOf } from '#data/decision/decision-responses.ts';
import { decisionsOf, proposalsOf } from '#data/decision/decisions.ts';
import { messagesOf } from '#data/messages/messages.ts';
import { openStore } from '#data/open-store.ts';
import { recordOf } from '#data/patients/record.ts';
import { prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { accessTo, groupFile } from '../group/make-group.ts';
import { patientId } from '../group/plan.ts';
import { measurePairs } from '../pairs.ts';
import { type BenchSettings, type Measured, type Part, rounded } from '../part.ts';
import { type RawReader, rawRecord, rawReview } from '../raw-record.ts';

/** Days of a record of at least a thousand rows at three sessions a week. */
const days = 400;
const bar = 1.5;

export const reviewRead = async (access: Access, id: string, days: number): Promise<unknown> => {
  const since = addDays(access.day, -days);
  const versions = await prescriptionsOf(access, id);
  return [
    await recordOf(access, id, days),
    versions,
    await decisionsOf(access, id, since),
    await responsesOf(access, id),
    await proposalsOf(access, id),
    await messagesOf(access, id),
  ];
};

/** Another patient in every pair, the same one on both sides, spread over the whole group. */
const someone = (settings: BenchSettings, pair: number): string =>
  patientId((pair * 617) % settings.plan.patients);

const against = async (
  settings: BenchSettings,
  title: string,
  name: string,
  product: (access: Access, id: string) => Promise<unknown>,
  rawOf: (access: Access) => RawReader,
): Promise<readonly Measured[]> => {
  const store = openStore(await groupFile(settings.plan));
  try {
    const access = accessTo(store);
    const raw = rawOf(access);
    // Read once beforehand: the side that goes first would otherwise pay the disk for both.
    const side = (work: (id: string) => unknown) => ({
      ready: async (pair: number) => {
        const id = someone(settings, pair);
        raw.read(access, id, days);
        return () => work(id);
      },
    });
    const paired = await measurePairs(
      side((id) => product(access, id)),
      side((id) => raw.read(access, id, days)),
      settings.until,
    );
    const rows = raw.read(access, someone(settings, 1), days);
    const figures = { rows, 'product ms': rounded(paired.firstMs), 'raw ms': rounded(paired.secondMs) };
    return [{ part: name, title, bar, paired, figures }];
  } finally {
    store.close();
  }
};

const partOf = (
  name: string,
  about: string,
  product: Parameters<typeof against>[3],
  rawOf: Parameters<typeof against>[4],
): Part => ({ name, about, run: (settings) => against(settings, about, name, product, rawOf) });

export const recordPart = partOf(
  'record',
  'patient record ÷ the same rows read raw',
  (access, id) => recordOf(access, id, days),
  (access) => rawRecord(access.store.reader.client),
);

export const reviewPart = partOf(
  'review',
  'review picture ÷ the same rows read raw',
  (access, id) => reviewRead(access, id, days),
  (access) => rawReview(access.store.reader.client),
);
