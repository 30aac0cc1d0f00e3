import { describe, expect, it } from 'vitest';
import { dataFolder } from './data-folder.js';

// Outside check: XDG Base Directory Specification 0.8, "Environment variables" ($XDG_DATA_HOME defaults to
// $HOME/.local/share; paths must be absolute, relative ones are ignored). Quoted from memory.
describe('the data folder', () => {
  const linux = (env: Record<string, string>) => dataFolder({ platform: 'linux', home: '/home/ann', env });

  it('is where the person says, on every platform', () => {
    for (const platform of ['linux', 'darwin', 'win32'] as const)
      expect(dataFolder({ platform, home: '/h', env: { GUDGEON_DATA: '/mnt/shop' } })).toBe('/mnt/shop');
  });
  it('follows the base directory rules on Linux', () => {
    expect(linux({})).toBe('/home/ann/.local/share/gudgeon');
    expect(linux({ XDG_DATA_HOME: '/data' })).toBe('/data/gudgeon');
    expect(linux({ XDG_DATA_HOME: '' })).toBe('/home/ann/.local/share/gudgeon');
    expect(linux({ XDG_DATA_HOME: 'not/absolute' })).toBe('/home/ann/.local/share/gudgeon');
  });
  it('is the application folder on macOS and the roaming folder on Windows', () => {
    expect(dataFolder({ platform: 'darwin', home: '/Users/ann', env: {} })).toBe(
      '/Users/ann/Library/Application Support/gudgeon',
    );
    expect(dataFolder({ platform: 'win32', home: 'C:\\Users\\ann', env: { APPDATA: 'D:\\Roaming' } })).toBe(
      'D:\\Roaming\\gudgeon',
    );
    expect(dataFolder({ platform: 'win32', home: 'C:\\Users\\ann', env: {} })).toBe(
      'C:\\Users\\ann\\AppData\\Roaming\\gudgeon',
    );
  });
});
