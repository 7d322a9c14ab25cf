// Herbs, stones, weather, tools and kitchen things: what a person in a warm room at midnight sees.
const words =
  'Sorrel Basalt Drizzle Mallet Fennel Slate Hoarfrost Bobbin Lovage Flint Squall Trowel Tansy ' +
  'Marl Thaw Chisel Yarrow Ochre Gust Bradawl Chervil Pumice Mizzle Thimble Borage Shale Sleet ' +
  'Spokeshave Hyssop Chert Fogbank Ladle Savory Gneiss Cloudburst Pestle Comfrey Loam Graupel ' +
  'Whetstone Burnet Tuff Rime Awl Costmary Jasper Dew Anvil Angelica Feldspar Zephyr Spindle ' +
  'Mugwort Gravel Monsoon Rasp Purslane Clinker Nimbus Hinge Woodruff Agate Breeze Sextant ' +
  'Caraway Dolerite Haar Gimlet Vervain Cobble Snowmelt Kettle Meadowsweet Quartzite Contrail ' +
  'Tongs Orache Scree Sunshower Bellows';

const names = words.split(' ');

/** The name of the nth animal; past the end of the list they are numbered, as keepers do. */
export function nameOf(n: number): string {
  const name = names[n % names.length] ?? 'Sorrel';
  const round = Math.floor(n / names.length);
  return round === 0 ? name : `${name} ${round + 1}`;
}

/** Genes as keepers write them. */
export const traits = [
  'Normal',
  'Pastel',
  'Pastel het Clown',
  'Enchi',
  '66% het Pied',
  'Clown',
  'Enchi Pastel',
  'het Pied',
  'Pied',
  'Normal 100% het Clown',
  'Fire',
  'Fire Enchi',
  'Yellow Belly',
  'Mojave',
  'Mojave 50% het Ghost',
  'Pinstripe',
  'Cinnamon',
  'Leopard het Pied',
  'Ghost',
  'Pastel Clown',
] as const;

/** A few of whom a story is told. */
const staged: Readonly<Record<string, string>> = {
  'female 2': 'Pastel 66% het Clown',
  'female 8': 'Cinnamon Enchi',
  'male 1': 'Clown',
  'male 2': 'Cinnamon 50% het Clown',
};

export const stagedTraits = (role: string, index: number, otherwise: string): string =>
  staged[`${role} ${index}`] ?? otherwise;
