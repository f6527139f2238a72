import type {
  ActRequest,
  Answer,
  AppError,
  BenchView,
  DeviceForm,
  RoundView,
  SeedView,
  SettingsView,
  StartView,
  TraysView,
  TrayView,
} from './generated/types';

/** Everything the UI can ask of the app. Each call rejects with an AppError. */
export interface Backend {
  start(): Promise<StartView>;
  choose(journal: 'own' | 'demo'): Promise<StartView>;
  leaveDemo(): Promise<StartView>;
  round(): Promise<RoundView>;
  trays(): Promise<TraysView>;
  tray(id: string): Promise<TrayView>;
  seed(): Promise<SeedView>;
  bench(packet: string | null): Promise<BenchView>;
  settings(): Promise<SettingsView>;
  setDevice(device: DeviceForm): Promise<SettingsView>;
  act(request: ActRequest): Promise<Answer>;
  undo(act: string, confirmed: boolean): Promise<Answer>;
  withdraw(entry: string, confirmed: boolean): Promise<Answer>;
  /** Calls back when time has moved on and views should be asked for again. */
  onDueChanged(changed: () => void): Promise<() => void>;
}

/** Whatever was thrown, as an error that can be shown. */
export function asAppError(thrown: unknown): AppError {
  if (typeof thrown === 'object' && thrown !== null && 'code' in thrown && 'say' in thrown) {
    return thrown as AppError;
  }
  const what = thrown instanceof Error ? thrown.message : String(thrown);
  return { code: 'unexpected', say: { key: 'screen-unexpected', args: { what: { as: 'text', value: what } } } };
}
