/** What a new clinic has to settle before its first patient, as the record says now. */
import { firstDayList } from '#core/clinic/first-day-list.ts';
import { cliniciansOf, coveringClinicianOf } from '#data/clinic/covering-clinicians.ts';
import { wordingsOf } from '#data/episode/consents.ts';
import { clinicOf } from '#data/patients/people.ts';
import { Problem } from '../errors.ts';
import { administratorProcedure, router } from '../trpc.ts';

export const firstDayRouter = router({
  list: administratorProcedure.query(async ({ ctx: { access } }) => {
    const clinic = await clinicOf(access.store, access.clinicId);
    if (!clinic) throw new Problem('not-found', 'There is no such clinic.');
    const clinicians = await cliniciansOf(access);
    const named = await coveringClinicianOf(access);
    const wordings = await wordingsOf(access);
    return firstDayList({
      ...clinic,
      coveringClinician: named && {
        name: named.name,
        isActive: clinicians.some(({ id }) => id === named.id),
      },
      clinicians: clinicians.length,
      ownWordings: wordings.filter(({ ownText }) => ownText !== null).length,
      wordings: wordings.length,
    });
  }),
});
