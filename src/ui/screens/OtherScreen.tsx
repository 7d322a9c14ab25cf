import type { AnimalId, ClutchId, IncubatorId, RackId, RoomId } from '../../domain/core/ids.ts';
import { lazy } from '../lazy.tsx';
import { TonightScreen } from './TonightScreen.tsx';

const AddScreen = lazy(async () => (await import('./AddScreen.tsx')).AddScreen);
const AnimalScreen = lazy(async () => (await import('./AnimalScreen.tsx')).AnimalScreen);
const BuyersScreen = lazy(async () => (await import('../sales/BuyersScreen.tsx')).BuyersScreen);
const ChooseScreen = lazy(async () => (await import('../choosing/ChooseScreen.tsx')).ChooseScreen);
const FeedingScreen = lazy(
  async () => (await import('../feeding/FeedingScreen.tsx')).FeedingScreen,
);
const ClutchScreen = lazy(async () => (await import('../hatchery/ClutchScreen.tsx')).ClutchScreen);
const FindScreen = lazy(async () => (await import('./FindScreen.tsx')).FindScreen);
const HatcheryScreen = lazy(
  async () => (await import('../hatchery/HatcheryScreen.tsx')).HatcheryScreen,
);
const IncubatorScreen = lazy(
  async () => (await import('../hatchery/IncubatorScreen.tsx')).IncubatorScreen,
);
const LabelsHost = lazy(async () => (await import('./LabelsHost.tsx')).LabelsHost);
const LineageScreen = lazy(
  async () => (await import('../lineage/LineageScreen.tsx')).LineageScreen,
);
const MealsScreen = lazy(async () => (await import('./MealsScreen.tsx')).MealsScreen);
const MovesScreen = lazy(async () => (await import('../rotation/MovesScreen.tsx')).MovesScreen);
const NewRackScreen = lazy(async () => (await import('./NewRackScreen.tsx')).NewRackScreen);
const PapersScreen = lazy(async () => (await import('../sales/PapersScreen.tsx')).PapersScreen);
const PairScreen = lazy(async () => (await import('../genes/PairScreen.tsx')).PairScreen);
const PreyScreen = lazy(async () => (await import('../feeding/PreyScreen.tsx')).PreyScreen);
const ProtocolScreen = lazy(async () => (await import('./ProtocolScreen.tsx')).ProtocolScreen);
const RackScreen = lazy(async () => (await import('./RackScreen.tsx')).RackScreen);
const RacksScreen = lazy(async () => (await import('./RacksScreen.tsx')).RacksScreen);
const RegisterScreen = lazy(
  async () => (await import('../sales/RegisterScreen.tsx')).RegisterScreen,
);
const RemindersScreen = lazy(async () => (await import('./RemindersScreen.tsx')).RemindersScreen);
const ReviewScreen = lazy(async () => (await import('../review/ReviewScreen.tsx')).ReviewScreen);
const RoomScreen = lazy(async () => (await import('./RoomScreen.tsx')).RoomScreen);
const RotationScreen = lazy(
  async () => (await import('../rotation/RotationScreen.tsx')).RotationScreen,
);
const SafeScreen = lazy(async () => (await import('./SafeScreen.tsx')).SafeScreen);
const SalesScreen = lazy(async () => (await import('../sales/SalesScreen.tsx')).SalesScreen);
const SeasonScreen = lazy(async () => (await import('./SeasonScreen.tsx')).SeasonScreen);
const SheetScreen = lazy(async () => (await import('../sheet/SheetScreen.tsx')).SheetScreen);
const ShelfScreen = lazy(async () => (await import('./ShelfScreen.tsx')).ShelfScreen);

/** All screens that no first record waits for. What each is made of is named here and not in the first script. */
export function OtherScreen({ route }: { readonly route: readonly string[] }) {
  const [first = '', second = '', third = ''] = route;
  switch (first) {
    case 'animal':
      return <AnimalScreen id={second as AnimalId} />;
    case 'choose':
      return <ChooseScreen />;
    case 'pair':
      return <PairScreen route={route.slice(1)} />;
    case 'rotation':
      return <RotationScreen page={second} />;
    case 'moves':
      return <MovesScreen />;
    case 'lineage':
      return <LineageScreen id={second as AnimalId} />;
    case 'racks':
      return <RacksScreen />;
    case 'rack':
      return <RackScreen id={second as RackId} />;
    case 'room':
      return <RoomScreen id={second as RoomId} form={third} />;
    case 'hatchery':
      return <HatcheryScreen />;
    case 'clutch':
      return <ClutchScreen id={second as ClutchId} />;
    case 'incubator':
      return <IncubatorScreen id={second as IncubatorId} form={third === '' ? undefined : third} />;
    case 'meals':
      return <MealsScreen id={second as RackId} />;
    case 'feeding':
      return <FeedingScreen />;
    case 'prey':
      return <PreyScreen />;
    case 'find':
      return <FindScreen />;
    case 'add':
      return <AddScreen position={second === '' ? undefined : second} />;
    case 'new-rack':
      return <NewRackScreen />;
    case 'sales':
      return <SalesScreen />;
    case 'papers':
      return <PapersScreen id={second as AnimalId} />;
    case 'register':
      return <RegisterScreen />;
    case 'buyers':
      return <BuyersScreen />;
    case 'labels':
      return <LabelsHost />;
    case 'reminders':
      return <RemindersScreen />;
    case 'protocol':
      return <ProtocolScreen key={second} begin={second === 'vet' ? 'vet' : undefined} />;
    case 'safe':
      return <SafeScreen />;
    case 'review':
      return <ReviewScreen />;
    case 'season':
      return <SeasonScreen />;
    case 'spreadsheet':
      return <SheetScreen />;
    case 'shelf':
      return <ShelfScreen />;
    default:
      return <TonightScreen />;
  }
}
