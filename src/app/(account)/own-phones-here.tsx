/** The phones of the patient who asks, with the one that asks marked. */
import { serverCaller } from '#server/http/caller.ts';
import { phoneIdHere } from '#server/sign-in/phone-here.ts';
import { OwnPhones } from '#ui/patient/account/own-phones.tsx';

export interface OwnPhonesHereProps {
  readonly zone: string;
  /** Whether a phone's PIN opened this sign-in, and so proves it again. */
  readonly isByPin: boolean;
}

export const OwnPhonesHere = async ({ zone, isByPin }: OwnPhonesHereProps) => {
  const { patient } = await serverCaller();
  const phones = await patient.phones.list();
  return (
    <OwnPhones
      phones={phones}
      hereId={await phoneIdHere()}
      zone={zone}
      provenBy={isByPin ? 'pin' : 'passphrase'}
    />
  );
};
