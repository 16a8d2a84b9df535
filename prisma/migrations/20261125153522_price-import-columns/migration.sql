-- What was read into the old columns is read again: the files are kept until they are taken over.
DELETE FROM "FileImportRow";
UPDATE "FileImport" SET status = 'reading', "rowsRead" = 0, "updatedAt" = 'epoch' WHERE status IN ('previewed', 'reading');

-- DropForeignKey
ALTER TABLE "FileImportRow" DROP CONSTRAINT "FileImportRow_importId_fkey";

-- DropIndex
DROP INDEX "PriceLine_itemId_unit_breakFrom_idx";

-- DropIndex
DROP INDEX "PriceLine_listId_itemId_unit_breakFrom_key";

-- DropIndex
DROP INDEX "FileImportRow_importId_change_rowNumber_idx";

-- AlterTable
ALTER TABLE "FileImport" ADD COLUMN     "phase" TEXT;

-- AlterTable
ALTER TABLE "FileImportRow" DROP CONSTRAINT "FileImportRow_pkey",
DROP COLUMN "data",
ADD COLUMN     "amount" DECIMAL(18,6),
ADD COLUMN     "before" DECIMAL(18,6),
ADD COLUMN     "beforeCurrency" TEXT,
ADD COLUMN     "breakFrom" DECIMAL(18,6),
ADD COLUMN     "breakKind" TEXT,
ADD COLUMN     "cells" TEXT[],
ADD COLUMN     "code" TEXT,
ADD COLUMN     "description" TEXT,
ADD COLUMN     "leadDays" INTEGER,
ADD COLUMN     "material" TEXT,
ADD COLUMN     "minimumQuantity" DECIMAL(18,6),
ADD COLUMN     "packSize" DECIMAL(18,6),
ADD COLUMN     "unit" TEXT,
ADD CONSTRAINT "FileImportRow_pkey" PRIMARY KEY ("importId", "change", "rowNumber", "id");

-- CreateIndex
CREATE INDEX "PriceLine_listId_rowNumber_idx" ON "PriceLine"("listId", "rowNumber");

-- CreateIndex
CREATE UNIQUE INDEX "PriceLine_itemId_unit_breakFrom_listId_key" ON "PriceLine"("itemId", "unit", "breakFrom", "listId");

-- CreateIndex
CREATE INDEX "FileImport_kind_createdAt_idx" ON "FileImport"("kind", "createdAt");

-- Names that no person reads are compared by their bytes, not by the rules of a language: filling and searching the
-- indexes of a large price list is the work of an import.
ALTER TABLE "PriceList" ALTER COLUMN "id" TYPE TEXT COLLATE "C";
ALTER TABLE "SupplierItem" ALTER COLUMN "id" TYPE TEXT COLLATE "C", ALTER COLUMN "code" TYPE TEXT COLLATE "C";
ALTER TABLE "PriceLine" ALTER COLUMN "id" TYPE TEXT COLLATE "C", ALTER COLUMN "listId" TYPE TEXT COLLATE "C",
  ALTER COLUMN "itemId" TYPE TEXT COLLATE "C", ALTER COLUMN "unit" TYPE TEXT COLLATE "C";
ALTER TABLE "FileImportRow" ALTER COLUMN "importId" TYPE TEXT COLLATE "C", ALTER COLUMN "change" TYPE TEXT COLLATE "C",
  ALTER COLUMN "code" TYPE TEXT COLLATE "C", ALTER COLUMN "unit" TYPE TEXT COLLATE "C";
