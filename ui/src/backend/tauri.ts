import { invoke } from '@tauri-apps/api/core';
import { listen } from '@tauri-apps/api/event';
import type { Backend } from './backend';
import type { ActRequest, DeviceForm } from './generated/types';

/** The app itself, through the shell. */
export class TauriBackend implements Backend {
  start: Backend['start'] = () => invoke('start');
  choose: Backend['choose'] = (journal) => invoke('choose', { journal });
  leaveDemo: Backend['leaveDemo'] = () => invoke('leave_demo');
  round: Backend['round'] = () => invoke('round');
  trays: Backend['trays'] = () => invoke('trays');
  tray: Backend['tray'] = (id) => invoke('tray', { id });
  seed: Backend['seed'] = () => invoke('seed');
  bench: Backend['bench'] = (packet) => invoke('bench', { packet });
  settings: Backend['settings'] = () => invoke('settings');
  setDevice: Backend['setDevice'] = (device: DeviceForm) => invoke('set_device', { device });
  act: Backend['act'] = (request: ActRequest) => invoke('act', { request });
  undo: Backend['undo'] = (act, confirmed) => invoke('undo', { act, confirmed });
  withdraw: Backend['withdraw'] = (entry, confirmed) => invoke('withdraw', { entry, confirmed });
  onDueChanged: Backend['onDueChanged'] = (changed) => listen('due-changed', changed);
}
