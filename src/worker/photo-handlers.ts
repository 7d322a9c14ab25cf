import type { Commands } from '../domain/desk.ts';
import type { World } from './collection.ts';

type Kind = 'keepPhoto' | 'photo' | 'dropPhoto' | 'photoRoom';

type PhotoHandlers = {
  readonly [Each in Kind]: (ask: Commands[Each]['ask']) => Promise<Commands[Each]['answer']>;
};

/** Pictures go to their shelf as they are; what they show is said by a record. */
export const photoHandlers = ({ photos, minter }: World): PhotoHandlers => ({
  async keepPhoto(jpeg) {
    const id = minter.photo();
    await (await photos()).keep(id, jpeg);
    return id;
  },
  photo: async (id) => (await photos()).load(id),
  async dropPhoto(id) {
    await (await photos()).drop(id);
    return null;
  },
  photoRoom: async () => (await photos()).room(),
});
