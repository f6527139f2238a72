//! The file system between SQLite and the real one, which is told of every
//! write before it is done. It is the default of this process, so the journal
//! needs no hook for it: <https://sqlite.org/vfs.html>.

use crate::machine::{self, Deed, State};
use rusqlite::ffi;
use std::cell::RefCell;
use std::ffi::{CStr, CString, c_char, c_int, c_void};
use std::path::{Path, PathBuf};
use std::ptr;
use std::sync::{Arc, Mutex, Once, OnceLock};

/// Who is told about a file.
struct Watched {
    state: Arc<Mutex<State>>,
    path: PathBuf,
}

/// A file as SQLite holds it; the real one lies behind it in memory.
#[repr(C)]
struct Shim {
    base: ffi::sqlite3_file,
    watched: *mut Watched,
}

/// Where the real file begins; a multiple of the alignment of pointers.
const REAL: usize = size_of::<Shim>();

struct Real(*mut ffi::sqlite3_vfs);
// SAFETY: the file system of the system is never changed or freed.
unsafe impl Send for Real {}
// SAFETY: as above.
unsafe impl Sync for Real {}
static SYSTEM: OnceLock<Real> = OnceLock::new();

fn system() -> *mut ffi::sqlite3_vfs {
    SYSTEM.get().expect("it was registered").0
}

thread_local! {
    static OPENED: RefCell<Vec<*mut ffi::sqlite3>> = const { RefCell::new(Vec::new()) };
}

unsafe extern "C" fn note_opened(
    db: *mut ffi::sqlite3,
    _: *mut *mut c_char,
    _: *const ffi::sqlite3_api_routines,
) -> c_int {
    OPENED.with_borrow_mut(|all| all.push(db));
    ffi::SQLITE_OK
}

/// Makes it the default, once.
pub(crate) fn register() {
    static ONCE: Once = Once::new();
    ONCE.call_once(|| {
        // SAFETY: SQLite's own structure is copied, only functions of the same
        // types are exchanged, and the copy is never freed.
        unsafe {
            let system = ffi::sqlite3_vfs_find(ptr::null());
            assert!(SYSTEM.set(Real(system)).is_ok());
            let mut ours = *system;
            ours.zName = c"faults".as_ptr();
            ours.szOsFile += c_int::try_from(REAL).unwrap();
            ours.xOpen = Some(open);
            ours.xDelete = Some(delete);
            let ours = Box::leak(Box::new(ours));
            assert_eq!(ffi::sqlite3_vfs_register(ours, 1), ffi::SQLITE_OK);
            assert_eq!(
                ffi::sqlite3_auto_extension(Some(note_opened)),
                ffi::SQLITE_OK
            );
        }
    });
}

pub(crate) fn execute_on_last(database: &str, sql: &str) {
    let sql = CString::new(sql).unwrap();
    // SAFETY: what was opened last under that name is open, by the contract of
    // the caller, on this thread.
    unsafe {
        let db = OPENED.with_borrow_mut(|all| all.pop()).expect("a database");
        let name = CStr::from_ptr(ffi::sqlite3_db_filename(db, c"main".as_ptr()));
        assert!(name.to_str().unwrap().ends_with(database), "{name:?}");
        let done = ffi::sqlite3_exec(db, sql.as_ptr(), None, ptr::null_mut(), ptr::null_mut());
        assert_eq!(done, ffi::SQLITE_OK);
    }
}

fn path_of(name: *const c_char) -> Option<PathBuf> {
    if name.is_null() {
        return None;
    }
    // SAFETY: SQLite gives names that end in a zero.
    let name = unsafe { CStr::from_ptr(name) };
    name.to_str().ok().map(PathBuf::from)
}

unsafe extern "C" fn open(
    _: *mut ffi::sqlite3_vfs,
    name: ffi::sqlite3_filename,
    file: *mut ffi::sqlite3_file,
    flags: c_int,
    out: *mut c_int,
) -> c_int {
    let mut flags = flags;
    let path = path_of(name);
    let state = path.as_deref().and_then(machine::of);
    if let (Some(state), Some(path)) = (&state, &path) {
        if machine::read_only(state) {
            if !path.exists() {
                return ffi::SQLITE_CANTOPEN;
            }
            flags &= !(ffi::SQLITE_OPEN_READWRITE | ffi::SQLITE_OPEN_CREATE);
            flags |= ffi::SQLITE_OPEN_READONLY;
        }
        machine::opened(state, path);
    }
    let watched = state.zip(path);
    // SAFETY: `file` has room for the shim and the real file (szOsFile), and
    // the real functions get the real file and file system.
    unsafe {
        let shim = file.cast::<Shim>();
        (*shim).base.pMethods = ptr::null();
        (*shim).watched = ptr::null_mut();
        let real = real(file);
        let done = (*system()).xOpen.unwrap()(system(), name, real, flags, out);
        if !(*real).pMethods.is_null() {
            (*shim).base.pMethods = &raw const METHODS;
            if let Some((state, path)) = watched {
                (*shim).watched = Box::into_raw(Box::new(Watched { state, path }));
            }
        }
        done
    }
}

unsafe extern "C" fn delete(_: *mut ffi::sqlite3_vfs, name: *const c_char, sync: c_int) -> c_int {
    if let Some(path) = path_of(name)
        && let Some(state) = machine::of(&path)
        && let Err(code) = machine::about_to(&state, &path, || Deed::Removed)
    {
        return code;
    }
    // SAFETY: the real function gets the real file system.
    unsafe { (*system()).xDelete.unwrap()(system(), name, sync) }
}

/// The real file behind a shim.
unsafe fn real(file: *mut ffi::sqlite3_file) -> *mut ffi::sqlite3_file {
    // SAFETY: the room behind the shim belongs to it (szOsFile).
    unsafe { file.cast::<u8>().add(REAL).cast() }
}

/// Tells of a deed before it is done.
unsafe fn tell(file: *mut ffi::sqlite3_file, deed: impl FnOnce() -> Deed) -> Result<(), c_int> {
    // SAFETY: `watched` is null or a box of ours until the file is closed.
    let watched = unsafe { (*file.cast::<Shim>()).watched.as_ref() };
    watched.map_or(Ok(()), |watched| {
        machine::about_to(&watched.state, Path::new(&watched.path), deed)
    })
}

/// Passes a call on to the real file.
macro_rules! passed_on {
    ($($name:ident as $method:ident ( $($arg:ident : $type:ty),* ) -> $back:ty;)+) => { $(
        unsafe extern "C" fn $name(file: *mut ffi::sqlite3_file $(, $arg: $type)*) -> $back {
            // SAFETY: SQLite calls with a file that is open; the real function
            // gets the real file.
            unsafe {
                let real = real(file);
                (*(*real).pMethods).$method.unwrap()(real $(, $arg)*)
            }
        }
    )+ };
}

passed_on! {
    read as xRead(to: *mut c_void, amount: c_int, at: ffi::sqlite3_int64) -> c_int;
    real_write as xWrite(from: *const c_void, amount: c_int, at: ffi::sqlite3_int64) -> c_int;
    real_truncate as xTruncate(size: ffi::sqlite3_int64) -> c_int;
    file_size as xFileSize(size: *mut ffi::sqlite3_int64) -> c_int;
    lock as xLock(how: c_int) -> c_int;
    unlock as xUnlock(how: c_int) -> c_int;
    check_reserved_lock as xCheckReservedLock(out: *mut c_int) -> c_int;
    file_control as xFileControl(what: c_int, arg: *mut c_void) -> c_int;
    sector_size as xSectorSize() -> c_int;
    characteristics as xDeviceCharacteristics() -> c_int;
    shm_map as xShmMap(page: c_int, size: c_int, extend: c_int, out: *mut *mut c_void) -> c_int;
    shm_lock as xShmLock(offset: c_int, n: c_int, flags: c_int) -> c_int;
    shm_barrier as xShmBarrier() -> ();
    shm_unmap as xShmUnmap(remove: c_int) -> c_int;
    real_close as xClose() -> c_int;
    real_sync as xSync(flags: c_int) -> c_int;
}

unsafe extern "C" fn close(file: *mut ffi::sqlite3_file) -> c_int {
    // SAFETY: the box was made when the file was opened and is dropped once.
    unsafe {
        let shim = file.cast::<Shim>();
        if !(*shim).watched.is_null() {
            drop(Box::from_raw((*shim).watched));
            (*shim).watched = ptr::null_mut();
        }
        real_close(file)
    }
}

unsafe extern "C" fn write(
    file: *mut ffi::sqlite3_file,
    from: *const c_void,
    amount: c_int,
    at: ffi::sqlite3_int64,
) -> c_int {
    // SAFETY: SQLite gives `amount` bytes at `from`.
    unsafe {
        let bytes = std::slice::from_raw_parts(from.cast::<u8>(), usize::try_from(amount).unwrap());
        let place = u64::try_from(at).unwrap();
        match tell(file, || Deed::Written(place, bytes.to_vec())) {
            Ok(()) => real_write(file, from, amount, at),
            Err(code) => code,
        }
    }
}

unsafe extern "C" fn truncate(file: *mut ffi::sqlite3_file, size: ffi::sqlite3_int64) -> c_int {
    // SAFETY: as for `write`.
    unsafe {
        match tell(file, || Deed::Cut(u64::try_from(size).unwrap())) {
            Ok(()) => real_truncate(file, size),
            Err(code) => code,
        }
    }
}

unsafe extern "C" fn sync(file: *mut ffi::sqlite3_file, flags: c_int) -> c_int {
    // SAFETY: as for `write`. What is watched needs no real waiting: its disk
    // is the record.
    unsafe {
        if (*file.cast::<Shim>()).watched.is_null() {
            return real_sync(file, flags);
        }
        tell(file, || Deed::Synced).err().unwrap_or(ffi::SQLITE_OK)
    }
}

/// Version 2: with shared memory for the WAL, without memory maps, which
/// would write past us.
static METHODS: ffi::sqlite3_io_methods = ffi::sqlite3_io_methods {
    iVersion: 2,
    xClose: Some(close),
    xRead: Some(read),
    xWrite: Some(write),
    xTruncate: Some(truncate),
    xSync: Some(sync),
    xFileSize: Some(file_size),
    xLock: Some(lock),
    xUnlock: Some(unlock),
    xCheckReservedLock: Some(check_reserved_lock),
    xFileControl: Some(file_control),
    xSectorSize: Some(sector_size),
    xDeviceCharacteristics: Some(characteristics),
    xShmMap: Some(shm_map),
    xShmLock: Some(shm_lock),
    xShmBarrier: Some(shm_barrier),
    xShmUnmap: Some(shm_unmap),
    xFetch: None,
    xUnfetch: None,
};
