/** That a dose is prescribed for other days than the planned week gives it, wherever it is chosen or signed. */
import type { Dose } from '#core/prescribing/dose.ts';
import { daysApart } from '#core/prescribing/programme/days-planned.ts';
import { say } from '#messages/en/staff/programme.ts';

export const daysPlannedInWords = (planned: number, prescribed: number): string => {
  const often = say('often', { prescribed });
  return planned === 0 ? say('apart.none', { often }) : say('apart', { planned, often });
};

/** null = as many as prescribed, or no week was planned. */
export const daysApartInWords = (dose: Dose, planned: number | null): string | null => {
  const apart = daysApart(dose, planned);
  return apart === null ? null : daysPlannedInWords(apart, dose.sessionsPerWeek);
};
