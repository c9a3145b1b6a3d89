namespace Turnrow.Fabric.Bodies;

/// <summary>Body measures of men, as published, in both units as published: the one is not always the other converted.</summary>
internal static class MenTable
{
    public const string Text =
        """
        source,standard body measurements for men,numbers from memory
        measure,unit,S,M,L,XL/1X,XXL/2X
        chest,cm,86-91.5,96.5-101.5,106.5-111.5,116.5-122,127-132
        centre-back-neck-to-wrist,cm,81-82.5,83.5-85,86.5-87.5,89-90,91.5-92.5
        back-hip-length,cm,63.5-64.5,67.5-68,68.5-69,69.5-70.5,71-72.5
        cross-back,cm,39.5-40.5,42-43,44.5-45.5,45.5-47,47-48
        arm-length,cm,45.5,47,49.5,50.5,52
        upper-arm,cm,30.5,33,38,40.5,43
        armhole-depth,cm,21.5-23,23-24,24-25.5,25.5-26.5,26.5-28
        waist,cm,71-76,81.5-86.5,91.5-96.5,106.5-111.5,116.5-122
        hips,cm,89-94,99-104,109-114,119-124,127-132
        chest,in,34-36,38-40,42-44,46-48,50-52
        centre-back-neck-to-wrist,in,32-32.5,33-33.5,34-34.5,35-35.5,36-36.5
        back-hip-length,in,25-25.5,26.5-26.75,27-27.25,27.5-27.75,28-28.5
        cross-back,in,15.5-16,16.5-17,17.5-18,18-18.5,18.5-19
        arm-length,in,18,18.5,19.5,20,20.5
        upper-arm,in,12,13,15,16,17
        armhole-depth,in,8.5-9,9-9.5,9.5-10,10-10.5,10.5-11
        waist,in,28-30,32-34,36-38,42-44,46-48
        hips,in,35-37,39-41,43-45,47-49,50-52
        source,length chart of the same standard,numbers from memory
        hip-length,cm,63.5-64.5,67.5-68,68.5-69,69.5-70.5,71-72.5
        hip-length,in,25-25.5,26.5-26.75,27-27.25,27.5-27.75,28-28.5
        source,size lists of makers of hats and gloves,centimetres converted
        head,cm,56-61,56-61,56-61,56-61,56-61
        hand,cm,19-23,19-23,19-23,19-23,19-23
        head,in,22-24,22-24,22-24,22-24,22-24
        hand,in,7.5-9,7.5-9,7.5-9,7.5-9,7.5-9
        """;
}
