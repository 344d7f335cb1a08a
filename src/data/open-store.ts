/** Opens a store together with all that is kept up with its records: the one place where subscribers are wired. */
import { subscribe } from './changed.ts';
import { openFile, type Store } from './database/store.ts';
import { rebuildWorklist, refreshWorklistItems } from './worklist/worklist-items.ts';

export const openStore = (file: string): Store => {
  const store = openFile(file);
  subscribe(store, {
    name: 'worklist',
    patientChanged: refreshWorklistItems,
    clinicChanged: async (access) => {
      await rebuildWorklist(access);
    },
  });
  return store;
};
