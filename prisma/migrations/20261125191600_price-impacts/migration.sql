-- CreateTable
CREATE TABLE "QuotePrice" (
    "revisionId" TEXT NOT NULL,
    "lineId" TEXT NOT NULL,

    CONSTRAINT "QuotePrice_pkey" PRIMARY KEY ("revisionId","lineId")
);

-- CreateTable
CREATE TABLE "PriceImpact" (
    "listId" TEXT NOT NULL,
    "status" TEXT NOT NULL DEFAULT 'waiting',
    "run" INTEGER NOT NULL DEFAULT 1,
    "onDay" DATE,
    "touched" INTEGER NOT NULL DEFAULT 0,
    "problem" TEXT,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "PriceImpact_pkey" PRIMARY KEY ("listId")
);

-- CreateTable
CREATE TABLE "PriceImpactRow" (
    "id" TEXT NOT NULL,
    "listId" TEXT NOT NULL,
    "revisionId" TEXT,
    "costSheetId" TEXT,
    "run" INTEGER NOT NULL,
    "isWorked" BOOLEAN NOT NULL DEFAULT false,
    "currency" TEXT,
    "costBefore" DECIMAL(18,6),
    "costAfter" DECIMAL(18,6),
    "priceBefore" DECIMAL(18,6),
    "priceAfter" DECIMAL(18,6),
    "stake" DECIMAL(18,6) NOT NULL DEFAULT 0,
    "problem" TEXT,
    "isDecided" BOOLEAN NOT NULL DEFAULT false,

    CONSTRAINT "PriceImpactRow_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "PriceImpactDecision" (
    "id" TEXT NOT NULL,
    "rowId" TEXT NOT NULL,
    "decision" TEXT NOT NULL,
    "reason" TEXT NOT NULL DEFAULT '',
    "decidedBy" TEXT NOT NULL,
    "decidedAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "PriceImpactDecision_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "QuotePrice_lineId_idx" ON "QuotePrice"("lineId");

-- CreateIndex
CREATE INDEX "PriceImpact_status_idx" ON "PriceImpact"("status");

-- CreateIndex
CREATE INDEX "PriceImpactRow_listId_isDecided_stake_id_idx" ON "PriceImpactRow"("listId", "isDecided", "stake" DESC, "id");

-- CreateIndex
CREATE INDEX "PriceImpactRow_revisionId_idx" ON "PriceImpactRow"("revisionId");

-- CreateIndex
CREATE INDEX "PriceImpactRow_costSheetId_idx" ON "PriceImpactRow"("costSheetId");

-- CreateIndex
CREATE UNIQUE INDEX "PriceImpactRow_listId_revisionId_key" ON "PriceImpactRow"("listId", "revisionId");

-- CreateIndex
CREATE UNIQUE INDEX "PriceImpactRow_listId_costSheetId_key" ON "PriceImpactRow"("listId", "costSheetId");

-- CreateIndex
CREATE INDEX "PriceImpactDecision_rowId_decidedAt_idx" ON "PriceImpactDecision"("rowId", "decidedAt");

-- AddForeignKey
ALTER TABLE "QuotePrice" ADD CONSTRAINT "QuotePrice_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "QuoteRevision"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "QuotePrice" ADD CONSTRAINT "QuotePrice_lineId_fkey" FOREIGN KEY ("lineId") REFERENCES "PriceLine"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PriceImpact" ADD CONSTRAINT "PriceImpact_listId_fkey" FOREIGN KEY ("listId") REFERENCES "PriceList"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PriceImpactRow" ADD CONSTRAINT "PriceImpactRow_listId_fkey" FOREIGN KEY ("listId") REFERENCES "PriceImpact"("listId") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PriceImpactRow" ADD CONSTRAINT "PriceImpactRow_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "QuoteRevision"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PriceImpactRow" ADD CONSTRAINT "PriceImpactRow_costSheetId_fkey" FOREIGN KEY ("costSheetId") REFERENCES "CostSheet"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PriceImpactDecision" ADD CONSTRAINT "PriceImpactDecision_rowId_fkey" FOREIGN KEY ("rowId") REFERENCES "PriceImpactRow"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- Quotes that are sent already rest on these lines.
INSERT INTO "QuotePrice" ("revisionId", "lineId")
SELECT DISTINCT revision.id, line.id
FROM "QuoteRevision" revision
  CROSS JOIN LATERAL jsonb_path_query(revision.working, '$.sheets.*.worked.columns[*].materials[*].priceLineId') AS used
  JOIN "PriceLine" line ON line.id = used #>> '{}'
WHERE revision.working IS NOT NULL;
