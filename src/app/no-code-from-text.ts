/**
 * To be loaded before anything else. The schema library would try whether it may turn text into
 * code; the page's content security policy forbids that and would report the attempt. The library
 * comes later than the page and finds this, where it keeps what its `config` is given.
 */
Object.assign(globalThis, { __zod_globalConfig: { jitless: true } });
