import { dateFormat } from '#messages/formats.ts';
import { localeOfDays } from '#ui/language/text-of-time.ts';

/** An instant of the system clock, as signing in counts it, on the clinic's wall. */
export const systemMoment = (instant: number, zone: string): string =>
  dateFormat(localeOfDays(), {
    timeZone: zone,
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).format(instant);
