/**
 * Puts up all sizes sold, and keeps the names of all cells, before each file of unit tests. The files share their
 * modules, so whichever cells a worker has met before, each finds the same.
 */
import '../src/boat/quantities/declared-tables';
import '../src/cells/common/sizes/packs-sold';
import '../src/cells/common/screws/screw-choice';
import '../src/cells/registry';
