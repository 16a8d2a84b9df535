-- AlterTable
ALTER TABLE "Design" ADD COLUMN     "overallHeightMm" DECIMAL(12,6),
ADD COLUMN     "overallLengthMm" DECIMAL(12,6),
ADD COLUMN     "overallWidthMm" DECIMAL(12,6);

-- CreateTable
CREATE TABLE "Enquiry" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "clientId" TEXT,
    "askedBy" TEXT NOT NULL DEFAULT '',
    "contact" TEXT NOT NULL DEFAULT '',
    "receivedOn" DATE NOT NULL,
    "source" TEXT NOT NULL,
    "sourceNote" TEXT NOT NULL DEFAULT '',
    "wanted" TEXT NOT NULL DEFAULT '',
    "wantedBy" DATE,
    "budget" DECIMAL(18,6),
    "outcome" TEXT NOT NULL DEFAULT 'open',
    "outcomeOn" DATE,
    "outcomeReason" TEXT NOT NULL DEFAULT '',
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Enquiry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "EnquiryHours" (
    "id" TEXT NOT NULL,
    "enquiryId" TEXT NOT NULL,
    "onDate" DATE NOT NULL,
    "personId" TEXT,
    "personName" TEXT NOT NULL,
    "gradeId" TEXT NOT NULL,
    "hours" DECIMAL(9,2) NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "EnquiryHours_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "EnquiryEarlyPrice" (
    "id" TEXT NOT NULL,
    "enquiryId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "givenOn" DATE NOT NULL,
    "currency" TEXT NOT NULL,
    "low" DECIMAL(18,6) NOT NULL,
    "likely" DECIMAL(18,6) NOT NULL,
    "high" DECIMAL(18,6) NOT NULL,
    "input" JSONB NOT NULL,
    "worked" JSONB NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "createdBy" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "EnquiryEarlyPrice_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "Enquiry_clientId_idx" ON "Enquiry"("clientId");

-- CreateIndex
CREATE INDEX "Enquiry_receivedOn_id_idx" ON "Enquiry"("receivedOn", "id");

-- CreateIndex
CREATE INDEX "Enquiry_outcome_idx" ON "Enquiry"("outcome");

-- CreateIndex
CREATE INDEX "EnquiryHours_enquiryId_idx" ON "EnquiryHours"("enquiryId");

-- CreateIndex
CREATE INDEX "EnquiryHours_personId_idx" ON "EnquiryHours"("personId");

-- CreateIndex
CREATE INDEX "EnquiryHours_gradeId_idx" ON "EnquiryHours"("gradeId");

-- CreateIndex
CREATE INDEX "EnquiryHours_onDate_idx" ON "EnquiryHours"("onDate");

-- CreateIndex
CREATE UNIQUE INDEX "EnquiryEarlyPrice_enquiryId_number_key" ON "EnquiryEarlyPrice"("enquiryId", "number");

-- AddForeignKey
ALTER TABLE "Enquiry" ADD CONSTRAINT "Enquiry_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "EnquiryHours" ADD CONSTRAINT "EnquiryHours_enquiryId_fkey" FOREIGN KEY ("enquiryId") REFERENCES "Enquiry"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "EnquiryHours" ADD CONSTRAINT "EnquiryHours_personId_fkey" FOREIGN KEY ("personId") REFERENCES "Person"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "EnquiryHours" ADD CONSTRAINT "EnquiryHours_gradeId_fkey" FOREIGN KEY ("gradeId") REFERENCES "LabourGrade"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "EnquiryEarlyPrice" ADD CONSTRAINT "EnquiryEarlyPrice_enquiryId_fkey" FOREIGN KEY ("enquiryId") REFERENCES "Enquiry"("id") ON DELETE CASCADE ON UPDATE CASCADE;
