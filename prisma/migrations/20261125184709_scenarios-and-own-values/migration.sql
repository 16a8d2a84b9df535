-- AlterTable
ALTER TABLE "CostSheet" ADD COLUMN     "ownValues" JSONB NOT NULL DEFAULT '[]';

-- CreateTable
CREATE TABLE "Scenario" (
    "id" TEXT NOT NULL,
    "costSheetId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "changes" JSONB NOT NULL,
    "madeBy" TEXT NOT NULL,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Scenario_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "Scenario_costSheetId_name_key" ON "Scenario"("costSheetId", "name");

-- AddForeignKey
ALTER TABLE "Scenario" ADD CONSTRAINT "Scenario_costSheetId_fkey" FOREIGN KEY ("costSheetId") REFERENCES "CostSheet"("id") ON DELETE CASCADE ON UPDATE CASCADE;
