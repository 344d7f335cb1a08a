/** A day and a time typed apart, kept as one text: YYYY-MM-DDTHH:MM, a day alone, or what stands of them. */

interface DateTimeTyped {
  readonly day: string;
  readonly time: string;
}

export const textPartsOf = (text: string): DateTimeTyped => {
  const [day = '', time = ''] = text.split('T');
  return { day, time };
};

/** Empty where nothing is typed. A time without a day stays, so that it is told and not lost. */
export const dateTimeFrom = ({ day, time }: DateTimeTyped): string => (time === '' ? day : `${day}T${time}`);
