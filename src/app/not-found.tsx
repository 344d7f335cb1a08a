import { LostPage } from '#ui/patient/lost-page.tsx';
import { chosenOnPhone } from './(patient)/chosen-on-phone.ts';

const NotFound = async () => <LostPage language={(await chosenOnPhone()).language} />;

export default NotFound;
