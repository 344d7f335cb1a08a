/** A passphrase to hand over, shown once. */
import { say } from '#messages/en/staff/administration.ts';
import { Notice } from '#ui/design-system/notice.tsx';

export const HandedOver = ({ name, passphrase }: { readonly name: string; readonly passphrase: string }) => (
  <Notice title={say('handed-over', { name })} isAnnounced>
    <p className="secret">{passphrase}</p>
    <p>{say('handed-over-note')}</p>
  </Notice>
);
