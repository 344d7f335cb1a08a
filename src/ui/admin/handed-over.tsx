/** A passphrase to hand over, shown once. */
import { Notice } from '#ui/design-system/notice.tsx';

export const HandedOver = ({ name, passphrase }: { readonly name: string; readonly passphrase: string }) => (
  <Notice title={`Passphrase for ${name}, shown once`} isAnnounced>
    <p className="secret">{passphrase}</p>
    <p>Hand it over in person. It works for seven days and must be changed at the first sign-in.</p>
  </Notice>
);
