/**
 * To be loaded before anything else. The schema library would try whether it may turn text into
 * code; the page's content security policy forbids that and would report the attempt.
 */
import { z } from "zod/mini";

z.config({ jitless: true });
