/** A group hour in a line. */
import { beginOf, type GroupHour } from '#core/clinic/group-hour.ts';
import { say } from '#messages/en/staff/groups/hours.ts';
import { wholeDayText } from '../../language/text-of-time.ts';

export const whenInWords = (hour: Pick<GroupHour, 'when'>): string => {
  const { day, time } = beginOf(hour);
  return say('when', { on: wholeDayText(day), time });
};

export const lineInWords = ({
  place,
  clinicianName: clinician,
  minutes,
}: Pick<GroupHour, 'place' | 'minutes'> & { readonly clinicianName: string }): string =>
  say('line', { place, clinician, minutes });
