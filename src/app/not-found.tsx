import { pageWord } from '#messages/page-words.ts';
import { LostPage } from '#ui/patient/lost-page.tsx';
import { chosenOnPhone } from './(patient)/chosen-on-phone.ts';

const NotFound = async () => {
  const { language } = await chosenOnPhone();
  return <LostPage language={language} word={(key) => pageWord(language, key)} />;
};

export default NotFound;
