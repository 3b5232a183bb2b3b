const MakePage = ({ id }: { id: string }) => <p>{id}</p>;
export default MakePage;
