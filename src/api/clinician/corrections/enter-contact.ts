/** A contact, entered first or in place of one entered in error. */
import { Problem, refusedWith } from '#api/errors.ts';
import { checked } from '#api/inputs/checked.ts';
import { mostAgainHours, mostHoursOf } from '#core/danger/contact-again.ts';
import { contactConsistent, contactFields } from '#core/danger/danger-fields.ts';
import type { Access } from '#data/access.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import { recordContact } from '#data/danger/contacts.ts';
import { contactsOnRecord } from '#data/danger/danger-record.ts';
import type { Patient } from '#data/patients/people.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { requireAsked } from '../episode/contact-asked.ts';

interface ContactEntering {
  readonly access: Access;
  readonly patient: Patient;
  readonly instead: { readonly id: string } | null;
}

const hourMs = 3_600_000;

const requireSameAsked = async (
  access: Access,
  patientId: string,
  contactId: string,
  row: { readonly signIds: readonly string[]; readonly decisionIds: readonly string[] },
): Promise<void> => {
  const before = (await contactsOnRecord(access, patientId)).find(({ id }) => id === contactId);
  const named = new Set([...(before?.signIds ?? []), ...(before?.decisionIds ?? [])]);
  if ([...row.signIds, ...row.decisionIds].every((id) => named.has(id))) return;
  throw new Problem(
    'refused',
    'A corrected contact is about what the first one was about. Record another one.',
  );
};

/** Nothing that asks for somebody today may rest until tomorrow because nobody answered the telephone. */
const requireSoon = async (
  access: Access,
  patient: Patient,
  about: { readonly signIds: readonly string[]; readonly decisionIds: readonly string[] },
  hours: number,
): Promise<void> => {
  const { signs, asks } = await planOf(access, patient);
  const urgencies = [
    ...signs.filter(({ sign }) => about.signIds.includes(sign.id)).map(({ sign }) => sign.urgency),
    ...asks.filter(({ id }) => about.decisionIds.includes(id)).map(({ contact }) => contact),
  ];
  const most = mostHoursOf(urgencies, mostAgainHours(await settingsOf(access)));
  if (hours <= most) return;
  throw refusedWith([
    {
      field: 'input.againInHours',
      code: 'too-high',
      reason: `What this contact is about cannot wait ${hours} hours: try again within ${most === 1 ? '1 hour' : `${most} hours`}.`,
    },
  ]);
};

/** What it ends is open when it is entered first; in place of another it speaks of what that one named. */
export const enterContact = async (
  { access, patient, instead }: ContactEntering,
  value: unknown,
): Promise<string> => {
  const { againInHours, ...row } = checked(contactFields, value, contactConsistent);
  if (instead) await requireSameAsked(access, patient.id, instead.id, row);
  else requireAsked(await planOf(access, patient), row.signIds, row.decisionIds);
  if (againInHours !== null) await requireSoon(access, patient, row, againInHours);
  const isMissed = row.reached === 'nobody' && againInHours !== null;
  return recordContact(access, patient.id, {
    ...row,
    nextAt: isMissed ? access.now + againInHours * hourMs : null,
  });
};
