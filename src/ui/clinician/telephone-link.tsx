/** A number to ring, as it was written. */
export const TelephoneLink = ({ phone }: { readonly phone: string }) => (
  <a href={`tel:${phone.replace(/[^+\d]/g, '')}`}>{phone}</a>
);
