-- AlterTable
ALTER TABLE "Design" ADD COLUMN     "picturesVersion" INTEGER NOT NULL DEFAULT 1;

-- AlterTable
ALTER TABLE "Enquiry" ADD COLUMN     "picturesVersion" INTEGER NOT NULL DEFAULT 1;

-- CreateTable
CREATE TABLE "PictureUse" (
    "id" TEXT NOT NULL,
    "sha256" TEXT NOT NULL,
    "designId" TEXT,
    "enquiryId" TEXT,
    "position" INTEGER NOT NULL,
    "alternativeText" TEXT NOT NULL,
    "caption" TEXT NOT NULL DEFAULT '',
    "isCover" BOOLEAN NOT NULL DEFAULT false,

    CONSTRAINT "PictureUse_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "PictureUse_sha256_idx" ON "PictureUse"("sha256");

-- CreateIndex
CREATE UNIQUE INDEX "PictureUse_designId_sha256_key" ON "PictureUse"("designId", "sha256");

-- CreateIndex
CREATE UNIQUE INDEX "PictureUse_enquiryId_sha256_key" ON "PictureUse"("enquiryId", "sha256");

-- AddForeignKey
ALTER TABLE "PictureUse" ADD CONSTRAINT "PictureUse_sha256_fkey" FOREIGN KEY ("sha256") REFERENCES "Picture"("sha256") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PictureUse" ADD CONSTRAINT "PictureUse_designId_fkey" FOREIGN KEY ("designId") REFERENCES "Design"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PictureUse" ADD CONSTRAINT "PictureUse_enquiryId_fkey" FOREIGN KEY ("enquiryId") REFERENCES "Enquiry"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- Of a design or of an enquiry, never of both, and each has at most one cover.
ALTER TABLE "PictureUse" ADD CONSTRAINT "PictureUse_one_owner" CHECK (num_nonnulls("designId", "enquiryId") = 1);
CREATE UNIQUE INDEX "PictureUse_design_cover" ON "PictureUse"("designId") WHERE "isCover";
CREATE UNIQUE INDEX "PictureUse_enquiry_cover" ON "PictureUse"("enquiryId") WHERE "isCover";
